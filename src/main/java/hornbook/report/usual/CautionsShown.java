package hornbook.report.usual;

import hornbook.advice.AfterVet;
import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.report.words.PageContext;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The cautions of the usual page: those about the foot first, then those about the technique that
 * is chosen, or that comes first once the vet has looked. Cautions about other techniques stand in
 * full and in JSON.
 */
public final class CautionsShown {
  /** About people, law and materials: true of every foot. */
  private static final Set<String> EVERYWHERE = Set.of("people", "materials");

  private CautionsShown() {}

  public static List<CautionGiven> of(PageContext told, FootAdvice foot) {
    List<String> chosen =
        Stream.concat(
                foot.firstChoice().stream(), AfterVet.choice(foot, told.book()::firstAid).stream())
            .map(OptionAdvice::id)
            .toList();
    return foot.cautions().stream()
        .filter(
            one ->
                one.techniques().isEmpty() || one.techniques().stream().anyMatch(chosen::contains))
        .sorted(Comparator.comparing(one -> rank(told, one)))
        .toList();
  }

  private static int rank(PageContext told, CautionGiven caution) {
    boolean everywhere = EVERYWHERE.contains(told.rule(caution.rule()).topic());
    return (everywhere ? 2 : 0) + (caution.techniques().isEmpty() ? 0 : 1);
  }
}
