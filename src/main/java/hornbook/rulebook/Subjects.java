package hornbook.rulebook;

import hornbook.assessment.Crack;
import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.Kit;
import hornbook.assessment.Measures;
import hornbook.assessment.Signs;
import hornbook.assessment.Stretch;
import hornbook.assessment.Visit;
import hornbook.assessment.Word;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What rules may ask about: the fields of the assessment by their own names, and the computed
 * readings. Names are the same in whatever group a field stands.
 */
public final class Subjects {
  /** Words of the program's own beside those of the assessment. */
  private static final Map<String, Set<String>> DERIVED =
      Map.of("limbs", Set.of("fore", "hind"), "age", Set.of("adult", "foal"));

  private static final Set<String> YES_NO = Set.of("yes", "no");
  private static final Map<String, Set<String>> WORDS = new LinkedHashMap<>();
  private static final Set<String> NUMBERS = new TreeSet<>();

  static {
    WORDS.putAll(DERIVED);
    for (Class<? extends Record> group :
        List.of(Horse.class, Visit.class, Foot.class, Measures.class, Signs.class, Kit.class)) {
      for (RecordComponent component : group.getRecordComponents()) {
        add(component);
      }
    }
    WORDS.put("cracks", Set.of("none", "some"));
    for (ReadingKind kind : ReadingKind.values()) {
      NUMBERS.add(kind.id());
    }
  }

  private Subjects() {}

  private static void add(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == Double.class || type == Integer.class) {
      NUMBERS.add(component.getName());
    } else {
      Set<String> words = wordsOf(component);
      if (words != null) {
        WORDS.put(component.getName(), words);
      }
    }
  }

  /** The words a field can take, or null where it takes none. */
  private static Set<String> wordsOf(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == Boolean.class) {
      return YES_NO;
    }
    if (Word.class.isAssignableFrom(type)) {
      return words(type);
    }
    if (component.getGenericType() instanceof ParameterizedType list) {
      Type each = list.getActualTypeArguments()[0];
      if (each instanceof Class<?> one && Word.class.isAssignableFrom(one)) {
        Set<String> words = new LinkedHashSet<>(words(one));
        words.add("none");
        return words;
      }
    }
    return null;
  }

  private static Set<String> words(Class<?> type) {
    Set<String> words = new LinkedHashSet<>();
    for (Object constant : type.getEnumConstants()) {
      words.add(((Word) constant).word());
    }
    return words;
  }

  public static boolean isNumber(String what) {
    return NUMBERS.contains(what);
  }

  public static Set<String> numbers() {
    return NUMBERS;
  }

  /** The words a field can show, or null if there is no such field. */
  public static Set<String> words(String what) {
    return WORDS.get(what);
  }

  public static Set<String> wordFields() {
    return WORDS.keySet();
  }

  static Set<String> crackWords(String field) {
    return wordsOf(Crack.class, field);
  }

  static Set<String> stretchWords(String field) {
    return wordsOf(Stretch.class, field);
  }

  private static Set<String> wordsOf(Class<? extends Record> group, String field) {
    for (RecordComponent component : group.getRecordComponents()) {
      if (component.getName().equals(field)) {
        return wordsOf(component);
      }
    }
    return null;
  }
}
