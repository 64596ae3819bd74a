package hornbook.cli.rules;

import hornbook.advice.engine.Advisor;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.CasesOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.handbook.Handbook;
import hornbook.rulebook.load.LoadedRules;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.FiredCase;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.util.Map;

/** Writes the whole rule base as one book. */
final class RulesHandbookCommand extends Task {
  private enum Form {
    HTML,
    PDF,
    MARKDOWN
  }

  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.HTML,
          "a page for the browser and the printer, a PDF, or Markdown",
          "--format");
  private final UnitsOption units = new UnitsOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final CasesOption cases = new CasesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  public RulesHandbookCommand(Surroundings surroundings) {
    super(
        surroundings,
        "handbook",
        "All the rules as one book, to read, print and correct.",
        "",
        "Examples:",
        "  hornbook rules handbook --output handbook.html",
        "  hornbook rules handbook --format pdf --output handbook.pdf",
        "  hornbook rules handbook --format markdown --output handbook.md",
        "  hornbook rules handbook --practice yard.yaml -o our-handbook.html",
        "");
  }

  @Override
  public ExitCode run() {
    LoadedRules loaded = rules.of(surroundings).loaded();
    pdf.only(form.value() == Form.PDF);
    Map<String, FiredCase> fired = fired(loaded);
    switch (form.value()) {
      case HTML -> output.deliver(Handbook.html(loaded.book(), fired, units.units()), surroundings);
      case PDF -> pdf.deliver(Handbook.html(loaded.book(), fired, units.units()), surroundings);
      case MARKDOWN ->
          output.deliver(Handbook.markdown(loaded.book(), fired, units.units()), surroundings);
    }
    return ExitCode.DONE;
  }

  private Map<String, FiredCase> fired(LoadedRules loaded) {
    CaseLibrary library = cases.sound(rules.folder(), surroundings);
    try {
      return FiredCase.all(new Advisor(loaded), library);
    } catch (RuleCase.Unusable unusable) {
      throw cases.unusable(unusable);
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the cases cannot be read");
    }
  }
}
