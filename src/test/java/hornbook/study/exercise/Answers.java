package hornbook.study.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Changes made to an answer, one part at a time. */
public final class Answers {
  private Answers() {}

  public static FootAnswer vet(FootAnswer of, String vet, List<String> vetFor) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        vet,
        vetFor,
        of.technique(),
        of.because(),
        of.ruledOut(),
        of.supports(),
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer technique(FootAnswer of, String technique, String departs) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        technique,
        of.because(),
        of.ruledOut(),
        of.supports(),
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        departs);
  }

  public static FootAnswer because(FootAnswer of, List<String> because) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        of.technique(),
        because,
        of.ruledOut(),
        of.supports(),
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer ruledOut(FootAnswer of, Map<String, List<String>> ruledOut) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        of.technique(),
        of.because(),
        ruledOut,
        of.supports(),
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer supports(FootAnswer of, List<String> supports) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        of.technique(),
        of.because(),
        of.ruledOut(),
        supports,
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer findings(FootAnswer of, List<String> findings) {
    return new FootAnswer(
        of.limb(),
        findings,
        of.vet(),
        of.vetFor(),
        of.technique(),
        of.because(),
        of.ruledOut(),
        of.supports(),
        of.cautions(),
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer cautions(FootAnswer of, List<String> cautions) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        of.technique(),
        of.because(),
        of.ruledOut(),
        of.supports(),
        cautions,
        of.ask(),
        of.nextVisit(),
        of.departs());
  }

  public static FootAnswer ask(FootAnswer of, List<String> ask) {
    return new FootAnswer(
        of.limb(),
        of.findings(),
        of.vet(),
        of.vetFor(),
        of.technique(),
        of.because(),
        of.ruledOut(),
        of.supports(),
        of.cautions(),
        ask,
        of.nextVisit(),
        of.departs());
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
