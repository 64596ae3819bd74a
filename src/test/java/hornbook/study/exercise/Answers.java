package hornbook.study.exercise;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Changes made to an answer, one part at a time. */
public final class Answers {
  private Answers() {}

  public static FootAnswer vet(FootAnswer of, String vet, List<String> vetFor) {
    return with(with(of, "vet", vet), "vetFor", vetFor);
  }

  public static FootAnswer technique(FootAnswer of, String technique, String departs) {
    return with(with(of, "technique", technique), "departs", departs);
  }

  public static FootAnswer because(FootAnswer of, List<String> because) {
    return with(of, "because", because);
  }

  public static FootAnswer supports(FootAnswer of, List<String> supports) {
    return with(of, "supports", supports);
  }

  public static FootAnswer findings(FootAnswer of, List<String> findings) {
    return with(of, "findings", findings);
  }

  public static FootAnswer cautions(FootAnswer of, List<String> cautions) {
    return with(of, "cautions", cautions);
  }

  public static FootAnswer ask(FootAnswer of, List<String> ask) {
    return with(of, "ask", ask);
  }

  public static FootAnswer ruledOut(FootAnswer of, Map<String, List<String>> ruledOut) {
    return with(of, "ruledOut", ruledOut);
  }

  /** The same answer with another value of one part. */
  private static FootAnswer with(FootAnswer of, String part, Object value) {
    try {
      RecordComponent[] parts = FootAnswer.class.getRecordComponents();
      Object[] values = new Object[parts.length];
      for (int at = 0; at < parts.length; at++) {
        values[at] = parts[at].getName().equals(part) ? value : parts[at].getAccessor().invoke(of);
      }
      return (FootAnswer) FootAnswer.class.getConstructors()[0].newInstance(values);
    } catch (ReflectiveOperationException never) {
      throw new AssertionError(never);
    }
  }

  /** A list with one word more. */
  public static List<String> plus(List<String> list, String word) {
    List<String> more = new ArrayList<>(list);
    more.add(word);
    return List.copyOf(more);
  }

  /** A list with one word less. */
  public static List<String> minus(List<String> list, String word) {
    List<String> less = new ArrayList<>(list);
    less.remove(word);
    return List.copyOf(less);
  }

  /** What is ruled out, with one more. */
  public static Map<String, List<String>> plus(Map<String, List<String>> map, String word) {
    Map<String, List<String>> more = new LinkedHashMap<>(map);
    more.put(word, List.of());
    return more;
  }

  /** What is ruled out, with one less. */
  public static Map<String, List<String>> minus(Map<String, List<String>> map, String word) {
    Map<String, List<String>> less = new LinkedHashMap<>(map);
    less.remove(word);
    return less;
  }
}
