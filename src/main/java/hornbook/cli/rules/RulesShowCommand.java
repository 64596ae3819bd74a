package hornbook.cli.rules;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.RuleCases;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.rules.CatalogueJson;
import hornbook.report.rules.CataloguePage;
import hornbook.report.rules.FoundRules;
import hornbook.report.rules.RulePage;
import hornbook.rulebook.NameSearch;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Shows one rule, or one of the other things the rule base knows by name. */
final class RulesShowCommand extends Task {
  private final ArgumentValue<String> id =
      arguments.operand(
          "ID",
          "the id of a rule, limit, finding, technique, support or source, or a word of the trade");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final UnitsOption units = new UnitsOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesShowCommand(Surroundings surroundings) {
    super(
        surroundings,
        "show",
        "Show one rule: statement, conditions, limits, sources and example case.",
        "",
        "Examples:",
        "  hornbook rules show N003                  a rule",
        "  hornbook rules show nails.branch.least    a limit",
        "  hornbook rules show low-heels             a finding",
        "  hornbook rules show glue-on               a technique or a support",
        "  hornbook rules show \"glued shoe\"           the same by its name",
        "  hornbook rules show lungwitz-1913         a source",
        "  hornbook rules show \"quarter crack\"       the rules about it",
        "");
  }

  @Override
  public ExitCode run() {
    Rulebook book = rules.of(surroundings).book();
    String rule = id.value().toUpperCase(Locale.ROOT);
    String known = book.rules().containsKey(rule) ? rule : named(book);
    String shown = shown(book, known).orElseThrow(() -> unknown(book));
    output.deliver(shown, surroundings);
    return ExitCode.DONE;
  }

  /** The id of what has this for its whole name on the pages; else the words as they are. */
  private String named(Rulebook book) {
    List<NamedOption> all = new ArrayList<>(book.techniques());
    all.addAll(book.supports());
    book.findings().values().forEach(one -> all.add(new NamedOption(one.id(), one.label())));
    return NameSearch.called(id.value(), all).map(NamedOption::id).orElse(id.value());
  }

  private Optional<String> shown(Rulebook book, String known) {
    if (book.topics().stream().anyMatch(topic -> topic.id().equals(known))) {
      return Optional.empty();
    }
    FoundRules found = new FoundRules(book);
    if (format.json()) {
      return new CatalogueJson(book).of(known).or(() -> found.json(known));
    }
    if (book.rules().containsKey(known)) {
      RulePage page = new RulePage(book, units.units());
      return Optional.of(
          page.text(book.rules().get(known), RuleCases.of(known, rules.folder(), surroundings)));
    }
    return new CataloguePage(book, units.units()).of(known).or(() -> found.page(known));
  }

  private Failure unknown(Rulebook book) {
    if (book.topics().stream().anyMatch(topic -> topic.id().equals(id.value()))) {
      return Failure.usage(
          "\"" + id.value() + "\" is a topic",
          "its rules: hornbook rules list --topic " + id.value());
    }
    List<String> known = new ArrayList<>(book.rules().keySet());
    book.limits().forEach(limit -> known.add(limit.id()));
    known.addAll(book.findings().keySet());
    book.techniques().forEach(technique -> known.add(technique.id()));
    book.supports().forEach(support -> known.add(support.id()));
    known.addAll(book.sources().keySet());
    book.glossary().forEach(term -> known.add(term.word()));
    String nearest = Nearest.of(id.value(), known);
    return Failure.usage(
        "the rule base has nothing named \"" + id.value() + "\"",
        nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
  }
}
