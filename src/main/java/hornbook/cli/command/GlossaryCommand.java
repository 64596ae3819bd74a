package hornbook.cli.command;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.report.rules.GlossaryPage;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/** What a word of the trade means. */
public final class GlossaryCommand extends Task {
  private final ArgumentValue<List<String>> words =
      arguments.operands(
          "WORD", "0..*", "a word of the trade, or an older one; all words if not given");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public GlossaryCommand(Surroundings surroundings) {
    super(
        surroundings,
        "glossary",
        "What a word of the trade means.",
        "Older words lead to those in use today.",
        "",
        "Examples:",
        "  hornbook glossary thrush",
        "  hornbook glossary seedy toe     an older word",
        "  hornbook glossary               every word",
        "");
  }

  @Override
  public ExitCode run() {
    output.spare(List.of());
    Rulebook book = rules.of(surroundings).book();
    GlossaryPage page = new GlossaryPage(book);
    String asked = String.join(" ", words.value());
    List<GlossaryTerm> found = asked.isBlank() ? book.glossary() : page.find(asked);
    if (found.isEmpty()) {
      throw unknown(asked, book);
    }
    output.deliver(format.json() ? page.json(found) : page.text(found), surroundings);
    return ExitCode.DONE;
  }

  private static Failure unknown(String asked, Rulebook book) {
    List<String> known = new ArrayList<>();
    book.glossary().forEach(term -> known.add(term.word()));
    book.glossary().forEach(term -> known.addAll(term.also()));
    String nearest = Nearest.of(asked, known);
    return Failure.usage(
        "the glossary has no word \"" + asked + "\"",
        nearest == null ? "every word: hornbook glossary" : "nearest: " + nearest,
        "rules that use it: hornbook rules list \"" + asked + "\"");
  }
}
