package hornbook.study.rulecase;

import hornbook.assessment.word.Word;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.fact.Caution;
import hornbook.rulebook.fact.Conclusion;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.fact.Referral;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a rule concludes, in the words of a case: the bearing and its subjects, the urgency and the
 * danger, the finding, or the caution. Two are equal where the rule says the same, in whatever
 * order it names its subjects.
 *
 * @param words the words under each key; nothing at all where the rule is to stay silent
 */
public record ExpectedConclusion(Map<String, Set<String>> words) {
  /** The rule is to stay silent on the foot. */
  static final ExpectedConclusion SILENT = new ExpectedConclusion(Map.of());

  /** The keys that stand together in a case, one set for each kind of conclusion. */
  static final List<Set<String>> SHAPES =
      List.of(
          Set.of("bearing", "subjects"),
          Set.of("urgency", "danger"),
          Set.of("finding"),
          Set.of("caution"));

  public ExpectedConclusion {
    words = java.util.Collections.unmodifiableMap(new TreeMap<>(words));
  }

  /** What a rule is written to conclude. */
  public static ExpectedConclusion of(RuleConclusion outcome) {
    if (outcome instanceof RuleConclusion.Reasons reason) {
      return reason(word(reason.bearing()), reason.subjects());
    } else if (outcome instanceof RuleConclusion.Refers referral) {
      return referral(word(referral.urgency()), referral.id());
    } else if (outcome instanceof RuleConclusion.Finds finding) {
      return new ExpectedConclusion(Map.of("finding", Set.of(finding.finding())));
    }
    return new ExpectedConclusion(
        Map.of("caution", Set.of(((RuleConclusion.Cautions) outcome).id())));
  }

  /** What a rule that fired concluded. */
  public static ExpectedConclusion of(Conclusion conclusion) {
    if (conclusion instanceof Reason reason) {
      return reason(word(reason.bearing()), reason.subjects());
    } else if (conclusion instanceof Referral referral) {
      return referral(word(referral.urgency()), referral.id());
    } else if (conclusion instanceof Finding finding) {
      return new ExpectedConclusion(Map.of("finding", Set.of(finding.what())));
    }
    return new ExpectedConclusion(Map.of("caution", Set.of(((Caution) conclusion).id())));
  }

  public boolean silent() {
    return words.isEmpty();
  }

  /** As a case has it after {@code expects:}. */
  public String yaml() {
    if (silent()) {
      return "silent";
    }
    StringBuilder yaml = new StringBuilder();
    for (String key : List.of("bearing", "subjects", "urgency", "danger", "finding", "caution")) {
      if (words.containsKey(key)) {
        String value = String.join(", ", words.get(key));
        yaml.append(yaml.isEmpty() ? "{" : ", ").append(key).append(": ");
        yaml.append(key.equals("subjects") ? "[" + value + "]" : value);
      }
    }
    return yaml.append('}').toString();
  }

  private static ExpectedConclusion reason(String bearing, List<String> subjects) {
    return new ExpectedConclusion(
        Map.of("bearing", Set.of(bearing), "subjects", new TreeSet<>(subjects)));
  }

  private static ExpectedConclusion referral(String urgency, String danger) {
    return new ExpectedConclusion(Map.of("urgency", Set.of(urgency), "danger", Set.of(danger)));
  }

  /** Unlike the word of the advice format, this tells the two kinds of need apart. */
  private static String word(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
