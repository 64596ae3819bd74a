package hornbook.report.usual;

import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.report.words.PageContext;
import hornbook.rulebook.Shown;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The cautions of the usual page: those about the foot first, then those about the technique that
 * is chosen. What is true of every foot, and what is about other techniques, stands on the job
 * sheet, in full and in JSON.
 */
public final class CautionsShown {
  /** About people, law and materials: true of every foot. */
  private static final Set<String> EVERYWHERE = Set.of("people", "materials");

  private CautionsShown() {}

  public static List<CautionGiven> of(PageContext told, FootAdvice foot) {
    String chosen = foot.firstChoice().map(OptionAdvice::id).orElse("");
    return foot.cautions().stream()
        .filter(one -> told.rule(one.rule()).text().shown() == Shown.ALWAYS)
        .filter(one -> one.techniques().isEmpty() || one.techniques().contains(chosen))
        .sorted(Comparator.comparing(one -> rank(told, one)))
        .toList();
  }

  private static int rank(PageContext told, CautionGiven caution) {
    boolean everywhere = EVERYWHERE.contains(told.rule(caution.rule()).topic());
    return (everywhere ? 2 : 0) + (caution.techniques().isEmpty() ? 0 : 1);
  }
}
