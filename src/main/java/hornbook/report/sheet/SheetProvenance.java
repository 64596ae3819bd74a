package hornbook.report.sheet;

import hornbook.plan.Plan;
import hornbook.plan.figure.Figure;
import hornbook.report.words.Citations;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What stands behind a job sheet, a line each: its numbers, the limits they rest on, the works. */
final class SheetProvenance {
  private final Plan plan;
  private final PlanPhrases phrases;
  private final Citations citations;

  SheetProvenance(Plan plan, PlanPhrases phrases) {
    this.plan = plan;
    this.phrases = phrases;
    this.citations = new Citations(plan.advice().rulebook());
  }

  /** What was reckoned, with its formula; two that read alike are told once. */
  List<String> numbers() {
    return plan.reckoned().stream().map(this::number).distinct().toList();
  }

  private String number(Figure one) {
    return one.label()
        + " "
        + phrases.of(one)
        + " = "
        + phrases.formula(one)
        + " ("
        + one.basis().word()
        + works(one.sources())
        + ")";
  }

  /** How many limits rest on what. */
  List<String> inShort() {
    Map<Basis, Integer> counted = new EnumMap<>(Basis.class);
    plan.taken().forEach(limit -> counted.merge(limit.basis(), 1, Integer::sum));
    List<String> told = new ArrayList<>();
    counted.forEach((basis, count) -> told.add(count + " " + basis.word()));
    List<String> lines = new ArrayList<>();
    if (!told.isEmpty()) {
      lines.add(
          "Limits behind them: "
              + String.join(", ", told)
              + "; each with its source on the whole sheet.");
    }
    return lines;
  }

  /** The limits of the trade, each with its ground and the place in the work. */
  List<String> limits() {
    return plan.taken().stream().map(this::limit).toList();
  }

  private String limit(Limit limit) {
    return limit.label()
        + " "
        + phrases.of(limit)
        + " ("
        + limit.basis().word()
        + works(List.of(limit.source()))
        + "; "
        + citations.locator(limit)
        + ")";
  }

  private static String works(Collection<String> sources) {
    List<String> works = sources.stream().filter(Source::work).toList();
    return works.isEmpty() ? "" : "; " + String.join(", ", works);
  }

  /** The works in full. */
  List<String> works() {
    return plan.sources().stream()
        .filter(Source::work)
        .sorted()
        .map(key -> citations.full(key) + " [" + key + "]")
        .toList();
  }
}
