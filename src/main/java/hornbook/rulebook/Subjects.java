package hornbook.rulebook;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What rules may ask about: the fields of the assessment by their own names, and the computed
 * readings. A field's name means the same in whatever group it stands.
 */
public final class Subjects {
  /**
   * The fields of the kit that rules may ask about; the others have names that stand elsewhere too.
   */
  public static final List<String> KIT =
      List.of(
          "kit.adhesive", "kit.wrap.layerThickness", "kit.wrap.rollLength", "kit.shoe.webWidth");

  private static final List<String> YES_NO = List.of("yes", "no");
  private static final Map<String, Subject> NUMBERS = new LinkedHashMap<>();
  private static final Map<String, Subject> WORDS = new LinkedHashMap<>();
  private static final Set<String> LISTS = new HashSet<>();

  /** A field or reading: its label in trade words, its unit, and the words it can show. */
  private record Subject(String label, String unit, List<String> words, Range bounds) {
    Subject(String label, String unit, List<String> words) {
      this(label, unit, words, Range.ANY);
    }
  }

  static {
    WORDS.put("limbs", new Subject("limb", "", List.of("fore", "hind")));
    WORDS.put("age", new Subject("age", "", List.of("adult", "foal")));
    WORDS.put(
        "defectMoist", new Subject("damp in what is missing, separated or crumbling", "", YES_NO));
    WORDS.put(
        "pairFrogState",
        new Subject(
            "state of the other frog of the pair", "", words(Fields.ofFoot("signs.frogState"))));
    WORDS.put("otherHeat", new Subject("heat found in another hoof of the horse", "", YES_NO));
    WORDS.put(
        "otherPulse",
        new Subject(
            "strongest digital pulse found on the other feet",
            "",
            words(Fields.ofFoot("signs.digitalPulse"))));
    WORDS.put(
        "pairQuiet", new Subject("other foot of the pair cool, its pulse normal", "", YES_NO));
    WORDS.put(
        "easeWithPus",
        new Subject(
            "pus seen to drain as the horse went easier", "", List.of("yes", "no", "none")));
    WORDS.put("lamenessSeen", new Subject("lameness looked at", "", YES_NO));
    WORDS.put("birthHoof", new Subject("still on the hoof it was born with", "", YES_NO));
    WORDS.put("judgedCrack", new Subject("crack judged by a vet lately", "", YES_NO));
    WORDS.put("judgedWallLoss", new Subject("loss of wall judged by a vet lately", "", YES_NO));
    WORDS.put("judgedYoungLimb", new Subject("young limb judged by a vet lately", "", YES_NO));
    WORDS.put("judgedLameness", new Subject("lameness judged by a vet lately", "", YES_NO));
    for (String group : List.of("horse", "visit")) {
      add((FieldHolder) Fields.at(group).kind());
    }
    add(Fields.FEET);
    add((FieldHolder) Fields.ofFoot("measures").kind());
    add((FieldHolder) Fields.ofFoot("signs").kind());
    add((FieldHolder) Fields.ofFoot("care").kind());
    KIT.forEach(path -> add(Fields.at(path)));
    WORDS.put("cracks", new Subject("cracks", "", List.of("none", "some")));
    for (ReadingKind kind : ReadingKind.values()) {
      Range bounds = kind.signed() ? Range.ANY : Range.between(0, Double.POSITIVE_INFINITY);
      NUMBERS.put(kind.id(), new Subject(kind.label(), kind.unit(), List.of(), bounds));
    }
  }

  private Subjects() {}

  private static void add(FieldHolder holder) {
    holder.fields().forEach(Subjects::add);
  }

  private static void add(Field field) {
    if (field.kind() instanceof Amount amount) {
      NUMBERS.put(
          field.name(), new Subject(field.label(), unit(amount), List.of(), bounds(amount)));
    } else if (field.kind() instanceof WholeNumber whole) {
      Range bounds = Range.between(whole.least(), whole.most());
      NUMBERS.put(field.name(), new Subject(field.label(), whole.unit(), List.of(), bounds));
    } else {
      List<String> words = words(field);
      if (words != null) {
        WORDS.put(field.name(), new Subject(field.label(), "", words));
        if (field.kind() instanceof WordList) {
          LISTS.add(field.name());
        }
      }
    }
  }

  private static Range bounds(Amount amount) {
    return Range.between(amount.leastKept(), amount.mostKept());
  }

  private static String unit(Amount amount) {
    return amount.dimension().kept().symbol();
  }

  private static List<String> words(Field field) {
    if (field.kind() instanceof Flag) {
      return YES_NO;
    }
    if (field.kind() instanceof OneWord one) {
      return one.words();
    }
    if (field.kind() instanceof WordList list) {
      List<String> words = new ArrayList<>(list.each().words());
      words.add("none");
      return words;
    }
    return null;
  }

  public static boolean isNumber(String what) {
    return NUMBERS.containsKey(what);
  }

  public static Set<String> numbers() {
    return NUMBERS.keySet();
  }

  /** The words a field can show, or null if no field of that name shows words. */
  public static List<String> words(String what) {
    return WORDS.containsKey(what) ? WORDS.get(what).words() : null;
  }

  public static Set<String> wordFields() {
    return WORDS.keySet();
  }

  /** The name of a field or reading in trade words. */
  public static String label(String what) {
    Subject number = NUMBERS.get(what);
    Subject subject = number == null ? WORDS.get(what) : number;
    return subject == null ? what : subject.label();
  }

  /** The least and the most a number can be. */
  public static Range bounds(String what) {
    return NUMBERS.containsKey(what) ? NUMBERS.get(what).bounds() : Range.ANY;
  }

  /** Whether a number can lie below a value at all. */
  public static boolean canBeUnder(String what, double value) {
    Range below = new Range(Double.NEGATIVE_INFINITY, false, value, false);
    return !below.and(bounds(what)).empty();
  }

  /** Whether a number can lie above a value at all. */
  public static boolean canBeOver(String what, double value) {
    Range above = new Range(value, false, Double.POSITIVE_INFINITY, false);
    return !above.and(bounds(what)).empty();
  }

  /** Whether a field can show several words at once. */
  public static boolean several(String what) {
    return LISTS.contains(what);
  }

  /** The unit of a number as facts hold it; empty for counts and words. */
  public static String unit(String what) {
    Subject number = NUMBERS.get(what);
    return number == null ? "" : number.unit();
  }

  public static List<String> crackWords(String field) {
    return rowWords("cracks", field);
  }

  public static List<String> stretchWords(String field) {
    return rowWords("wall", field);
  }

  private static List<String> rowWords(String rows, String name) {
    Field field = ((FieldHolder) Fields.ofFoot(rows).kind()).field(name);
    return field == null ? null : words(field);
  }
}
