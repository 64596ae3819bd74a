package hornbook.report.usual;

import hornbook.advice.FootAdvice;
import hornbook.advice.Question;
import hornbook.advice.QuestionValue;
import hornbook.assessment.word.Shoeing;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The questions of the usual page: what a person at the horse can answer today, and what would
 * change the advice by itself, given all that is known, by more than a word with the vet or a
 * caution. The others stand in full, in JSON and in the interview.
 */
public final class QuestionsAsked {
  private static final int MOST = 3;

  /** What only radiographs show. */
  private static final Set<String> RADIOGRAPHS = Set.of("palmarAngle", "soleDepth");

  /** Findings that call for radiographs. */
  private static final Set<String> SIGNS =
      Set.of("laminitis-suspected", "dropped-sole", "club-foot-grade-1", "club-foot-grade-2");

  private QuestionsAsked() {}

  public static List<Question> of(FootAdvice foot) {
    boolean signs = radiographsCalledFor(foot);
    return foot.questions().stream()
        .filter(one -> one.worth().compareTo(QuestionValue.CAUTION) < 0)
        .filter(one -> one.provisional() || one.alone())
        .filter(one -> one.urgency() != Urgency.MENTION)
        .filter(one -> one.worth() != QuestionValue.MENTION || !foot.referrals().isEmpty())
        .filter(one -> signs || !RADIOGRAPHS.contains(last(one.field())))
        .filter(one -> canBeAnswered(foot, last(one.field())))
        .limit(MOST)
        .toList();
  }

  /**
   * A call for the vet within days or sooner, or a finding that may be laminitis or a tight tendon.
   */
  private static boolean radiographsCalledFor(FootAdvice foot) {
    return foot.referrals().stream().anyMatch(one -> one.urgency() != Urgency.MENTION)
        || foot.findings().stream().anyMatch(one -> SIGNS.contains(one.id()));
  }

  /** Nobody counts the glued shoes of a foot that is not glued, or sees the wear of no shoe. */
  private static boolean canBeAnswered(FootAdvice foot, String field) {
    return switch (field) {
      case "gluedCycles" -> !shoeing(foot, Shoeing.UNSHOD, Shoeing.NAILED, Shoeing.WRAPPED);
      case "oldShoeWear" -> !shoeing(foot, Shoeing.UNSHOD);
      default -> true;
    };
  }

  private static boolean shoeing(FootAdvice foot, Shoeing... these) {
    return foot.sheet().seen().getOrDefault("shoeing", List.of()).stream()
        .anyMatch(seen -> Stream.of(these).anyMatch(one -> one.word().equals(seen.word())));
  }

  private static String last(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
