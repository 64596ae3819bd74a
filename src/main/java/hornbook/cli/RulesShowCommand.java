package hornbook.cli;

import hornbook.assessment.Nearest;
import hornbook.report.CatalogueJson;
import hornbook.report.CataloguePage;
import hornbook.report.RulePage;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.ShippedRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows one rule, or one of the other things the rule base knows by name. */
@Command(
    name = "show",
    header = {
      "Show one rule: what it says and asks, why, its limits, sources, and the case that fires it.",
      "",
      "Examples:",
      "  hornbook rules show N003                  a rule",
      "  hornbook rules show nails.branch.least    a limit",
      "  hornbook rules show low-heels             a finding",
      "  hornbook rules show glue-on               a technique or a support",
      "  hornbook rules show lungwitz-1913         a source",
      ""
    })
final class RulesShowCommand implements Task {
  @Parameters(
      paramLabel = "ID",
      description = "the id of a rule, limit, finding, technique, support or source")
  private String id;

  @Mixin private ListFormatOption format = new ListFormatOption();
  @Mixin private UnitsOption units = new UnitsOption();
  @Mixin private OutputOption output = new OutputOption();

  private final Surroundings surroundings;

  RulesShowCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public ExitCode run() {
    Rulebook book = ShippedRules.book();
    String rule = id.toUpperCase(Locale.ROOT);
    String known = book.rules().containsKey(rule) ? rule : id;
    String shown = shown(book, known).orElseThrow(() -> unknown(book));
    output.deliver(shown, surroundings);
    return ExitCode.DONE;
  }

  private Optional<String> shown(Rulebook book, String known) {
    if (format.json()) {
      return new CatalogueJson(book).of(known);
    }
    if (book.rules().containsKey(known)) {
      RulePage page = new RulePage(book, units.units());
      return Optional.of(page.text(book.rules().get(known), RuleCases.of(known, surroundings)));
    }
    return new CataloguePage(book, units.units()).of(known);
  }

  private Failure unknown(Rulebook book) {
    List<String> known = new ArrayList<>(book.rules().keySet());
    book.limits().forEach(limit -> known.add(limit.id()));
    known.addAll(book.findings().keySet());
    book.techniques().forEach(technique -> known.add(technique.id()));
    book.supports().forEach(support -> known.add(support.id()));
    known.addAll(book.sources().keySet());
    String nearest = Nearest.of(id, known);
    return Failure.usage(
        "the rule base knows nothing by the name \"" + id + "\"",
        nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
  }
}
