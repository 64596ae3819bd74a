package hornbook.study.rulecheck;

import hornbook.advice.FiredRule;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.file.RuleFault;
import hornbook.study.rulecase.FactNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Looks for two rules that say opposite things on the same foot, by firing them on one foot after
 * another. Opposite is:
 *
 * <ul>
 *   <li>two findings on one foot of which one excludes the other;
 *   <li>one rule that is for a technique or support, and one that is against it or rules it out,
 *       both resting on the very same facts, unless one of them declares its dissent;
 *   <li>one text that tells the farrier to do what another tells him not to do, unless one of them
 *       declares its dissent;
 *   <li>a rule that supports something, while one other rule ruled it out on every foot on which it
 *       ever fired.
 * </ul>
 *
 * Not opposite is what the order of verdicts settles: a reason for beside one that rules out on
 * other facts, or beside a need; a danger told at two urgencies, of which the greater is heard.
 */
public final class Contradictions {
  /** Fewer firings than this prove nothing of "every foot". */
  private static final int ENOUGH = 20;

  private final Advisor advisor;
  private final Rulebook book;
  private final Map<String, RuleFault> found = new TreeMap<>();
  private final Map<String, Integer> fired = new HashMap<>();

  /** For every "rule supports subject": the rules that ruled it out each time so far. */
  private final Map<String, Set<String>> overruling = new HashMap<>();

  public Contradictions(Advisor advisor) {
    this.advisor = advisor;
    this.book = advisor.book();
  }

  /** Fires the rules on every foot of an assessment. */
  public void run(Assessment assessment, String where) {
    advisor.firings(assessment).forEach(firings -> run(firings, where));
  }

  private void run(List<FiredRule> firings, String where) {
    Map<String, FiredRule> findings = new HashMap<>();
    List<FiredRule> reasons = new ArrayList<>();
    for (FiredRule firing : firings) {
      fired.merge(firing.rule(), 1, Integer::sum);
      if (firing.conclusion() instanceof Finding finding) {
        findings.put(finding.what(), firing);
      } else if (firing.conclusion() instanceof Reason) {
        reasons.add(firing);
      }
    }
    findings.keySet().forEach(id -> excluded(id, findings, where));
    told(firings, where);
    for (FiredRule one : reasons) {
      if (((Reason) one.conclusion()).bearing() == Bearing.FOR) {
        opposed(one, reasons, where);
      }
    }
  }

  /** Texts that tell a farrier to do a thing, and not to do it. */
  private void told(List<FiredRule> firings, String where) {
    for (FiredRule one : firings) {
      for (String deed : book.rules().get(one.rule()).text().does()) {
        for (FiredRule other : firings) {
          boolean against = book.rules().get(other.rule()).text().against().contains(deed);
          if (against && !dissent(one, other)) {
            add(
                one.rule(),
                other.rule(),
                "tells to do what " + other.rule() + " tells not to do, " + deed + ": on " + where,
                "word them so that both can be done, or have one ask for something the other does"
                    + " not");
          }
        }
      }
    }
  }

  private void excluded(String id, Map<String, FiredRule> findings, String where) {
    FiredRule own = findings.get(id);
    for (String excluded : book.findings().get(id).excludes()) {
      FiredRule other = findings.get(excluded);
      if (other != null) {
        add(
            own.rule(),
            other.rule(),
            "finds "
                + id
                + " because of "
                + FactNames.words(observed(own), book)
                + ", where "
                + other.rule()
                + " finds "
                + excluded
                + " because of "
                + FactNames.words(observed(other), book)
                + ", and one excludes the other: on "
                + where,
            "set their limits or words apart, or take out excludes");
      }
    }
  }

  private void opposed(FiredRule speaks, List<FiredRule> reasons, String where) {
    Reason own = (Reason) speaks.conclusion();
    for (String subject : own.subjects()) {
      Set<String> rulesOut = new HashSet<>();
      for (FiredRule against : reasons) {
        Reason other = (Reason) against.conclusion();
        if (!other.subjects().contains(subject)) {
          continue;
        }
        if (other.bearing() == Bearing.RULES_OUT) {
          rulesOut.add(against.rule());
        }
        boolean opposite =
            other.bearing() == Bearing.RULES_OUT || other.bearing() == Bearing.AGAINST;
        if (opposite && observed(speaks).equals(observed(against)) && !dissent(speaks, against)) {
          add(
              speaks.rule(),
              against.rule(),
              "supports "
                  + subject
                  + " and "
                  + against.rule()
                  + " "
                  + (other.bearing() == Bearing.AGAINST ? "against it" : "rules it out")
                  + ", both because of "
                  + FactNames.words(observed(speaks), book)
                  + ": on "
                  + where,
              "settle which holds there, or where one is another author's view write dissents: ["
                  + against.rule()
                  + "] beside its says");
        }
      }
      overruling.merge(
          speaks.rule() + " " + subject,
          rulesOut,
          (before, now) -> {
            Set<String> both = new HashSet<>(before);
            both.retainAll(now);
            return both;
          });
    }
  }

  private static Set<CitedFact> observed(FiredRule firing) {
    Set<CitedFact> observed = new HashSet<>(firing.conclusion().because());
    observed.removeIf(Limit.class::isInstance);
    return observed;
  }

  private boolean dissent(FiredRule one, FiredRule other) {
    RuleEntry first = book.rules().get(one.rule());
    RuleEntry second = book.rules().get(other.rule());
    return first.text().dissents().contains(second.id())
        || second.text().dissents().contains(first.id());
  }

  private void add(String rule, String other, String says, String cure) {
    String key = rule.compareTo(other) < 0 ? rule + " " + other : other + " " + rule;
    RuleEntry entry = book.rules().get(rule);
    found.putIfAbsent(
        key, new RuleFault(entry.file(), entry.line(), rule, "the rule " + says, cure));
  }

  /** What was found on all feet so far, one fault for each two rules. */
  public List<RuleFault> faults() {
    List<RuleFault> faults = new ArrayList<>(found.values());
    overruling.forEach(
        (key, by) -> {
          String rule = key.substring(0, key.indexOf(' '));
          String subject = key.substring(key.indexOf(' ') + 1);
          if (!by.isEmpty() && fired.get(rule) >= ENOUGH) {
            RuleEntry entry = book.rules().get(rule);
            faults.add(
                new RuleFault(
                    entry.file(),
                    entry.line(),
                    rule,
                    "the rule supports "
                        + subject
                        + ", but on each of the "
                        + fired.get(rule)
                        + " feet on which it fired it was ruled out by "
                        + String.join(", ", by),
                    "settle which of them holds: this one never counts"));
          }
        });
    return faults.stream().sorted().toList();
  }

  /** How often each rule fired. */
  public Map<String, Integer> fired() {
    return Map.copyOf(fired);
  }
}
