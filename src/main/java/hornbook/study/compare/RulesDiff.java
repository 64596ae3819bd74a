package hornbook.study.compare;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.LoadedRules;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Two rule bases compared with each other: what was written otherwise, and which cases' advice is
 * another for it.
 *
 * @param run how many feet were advised on under both
 */
public record RulesDiff(
    Rulebook before, Rulebook after, List<Part> parts, List<CaseChange> cases, int run) {

  /** What became of a rule or a limit. */
  public enum Fate {
    ADDED,
    REMOVED,
    CHANGED
  }

  /**
   * A rule or a limit that is not in both as it was.
   *
   * @param label its title or label
   * @param how what changed in it; empty where it is only in one
   */
  public record Part(Fate fate, boolean rule, String id, String label, List<String> how) {}

  /** A foot whose advice changed. */
  public record CaseChange(String name, Limb limb, List<Turn> turns) {}

  /**
   * One thing in the advice on a foot that is another.
   *
   * @param what {@code first-choice}, {@code urgency}, {@code referrals}, {@code cautions}, or the
   *     technique or support whose verdict it is
   */
  public record Turn(String what, String before, String after) {}

  /** Compares two rule bases over cases, each by its name. */
  public static RulesDiff of(LoadedRules before, LoadedRules after, Map<String, Assessment> cases) {
    Advisor was = new Advisor(before);
    Advisor is = new Advisor(after);
    List<CaseChange> changes = new ArrayList<>();
    int run = 0;
    for (Map.Entry<String, Assessment> one : cases.entrySet()) {
      List<FootAdvice> feetBefore = was.judge(one.getValue()).feet();
      List<FootAdvice> feetAfter = is.judge(one.getValue()).feet();
      for (int foot = 0; foot < feetBefore.size(); foot++) {
        run++;
        List<Turn> turns = turns(feetBefore.get(foot), feetAfter.get(foot));
        if (!turns.isEmpty()) {
          changes.add(new CaseChange(one.getKey(), feetBefore.get(foot).limb(), turns));
        }
      }
    }
    List<Part> parts = new ArrayList<>(limits(before.book(), after.book()));
    parts.addAll(rules(before.book(), after.book()));
    return new RulesDiff(
        before.book(), after.book(), List.copyOf(parts), List.copyOf(changes), run);
  }

  private static List<Turn> turns(FootAdvice before, FootAdvice after) {
    List<Turn> turns = new ArrayList<>();
    turn(turns, "first-choice", firstChoice(before), firstChoice(after));
    turn(turns, "urgency", urgency(before), urgency(after));
    turn(turns, "referrals", referrals(before), referrals(after));
    Map<String, String> verdicts = verdicts(before);
    Map<String, String> now = verdicts(after);
    Set<String> subjects = new TreeSet<>(verdicts.keySet());
    subjects.addAll(now.keySet());
    for (String subject : subjects) {
      turn(
          turns,
          subject,
          verdicts.getOrDefault(subject, "unknown to it"),
          now.getOrDefault(subject, "unknown to it"));
    }
    turn(turns, "cautions", cautions(before), cautions(after));
    return turns;
  }

  private static void turn(List<Turn> turns, String what, String before, String after) {
    if (!before.equals(after)) {
      turns.add(new Turn(what, before, after));
    }
  }

  private static String firstChoice(FootAdvice foot) {
    return foot.firstChoice().map(OptionAdvice::id).orElse("none");
  }

  private static String urgency(FootAdvice foot) {
    return foot.urgency().map(urgency -> urgency.word()).orElse("none");
  }

  private static String referrals(FootAdvice foot) {
    return joined(foot.referrals().stream().map(one -> one.id()).toList());
  }

  private static String cautions(FootAdvice foot) {
    return joined(foot.cautions().stream().map(one -> one.id()).toList());
  }

  private static String joined(List<String> ids) {
    return ids.isEmpty() ? "none" : String.join(", ", new TreeSet<>(ids));
  }

  private static Map<String, String> verdicts(FootAdvice foot) {
    Map<String, String> verdicts = new LinkedHashMap<>();
    foot.techniques().forEach(one -> verdicts.put(one.id(), one.verdict().word()));
    foot.supports().forEach(one -> verdicts.put(one.id(), one.verdict().word()));
    return verdicts;
  }

  private static List<Part> limits(Rulebook before, Rulebook after) {
    Map<String, Limit> was = byKey(before);
    Map<String, Limit> is = byKey(after);
    List<Part> parts = new ArrayList<>();
    for (String key : both(was.keySet(), is.keySet())) {
      Limit old = was.get(key);
      Limit now = is.get(key);
      if (old == null || now == null) {
        Limit lone = old == null ? now : old;
        Fate fate = old == null ? Fate.ADDED : Fate.REMOVED;
        parts.add(new Part(fate, false, key, lone.label(), List.of()));
      } else if (!old.equals(now)) {
        parts.add(new Part(Fate.CHANGED, false, key, now.label(), LimitDifference.of(old, now)));
      }
    }
    return parts;
  }

  /** By id, with limbs and age where it has them. */
  private static Map<String, Limit> byKey(Rulebook book) {
    Map<String, Limit> byKey = new LinkedHashMap<>();
    for (Limit limit : book.limits()) {
      String limbs =
          limit.limbs() == null ? "" : " " + limit.limbs().name().toLowerCase(Locale.ROOT);
      String age = limit.age() == null ? "" : " " + limit.age().name().toLowerCase(Locale.ROOT);
      byKey.put(limit.id() + limbs + age, limit);
    }
    return byKey;
  }

  private static List<Part> rules(Rulebook before, Rulebook after) {
    List<Part> parts = new ArrayList<>();
    for (String id : both(before.rules().keySet(), after.rules().keySet())) {
      RuleEntry old = before.rules().get(id);
      RuleEntry now = after.rules().get(id);
      if (old == null || now == null) {
        RuleEntry lone = old == null ? now : old;
        Fate fate = old == null ? Fate.ADDED : Fate.REMOVED;
        parts.add(new Part(fate, true, id, lone.title(), List.of()));
      } else {
        List<String> how = RuleDifference.of(old, now);
        if (!how.isEmpty()) {
          parts.add(new Part(Fate.CHANGED, true, id, now.title(), how));
        }
      }
    }
    return parts;
  }

  private static Set<String> both(Set<String> one, Set<String> other) {
    Set<String> both = new TreeSet<>(one);
    both.addAll(other);
    return both;
  }
}
