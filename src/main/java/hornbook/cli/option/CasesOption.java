package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.RuleFaultsFound;
import hornbook.cli.file.RulesFolder;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.read.RulebookReader;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The cases that rules are tried on: those that lie with them, or others. */
public final class CasesOption {
  private final ArgumentValue<String> folder;

  public CasesOption(Arguments arguments) {
    folder = arguments.text("DIR", "cases to use instead of those beside the rules", "--cases");
  }

  /**
   * The cases named, or those of the rules: in a folder {@code cases} in theirs, or beside it. For
   * rules that are added to those of the program, its own cases count too.
   *
   * @param own the folder of the rules; null for those of the program
   */
  public CaseLibrary of(Path own, Surroundings surroundings) {
    List<Path> folders = List.of();
    try {
      folders = folders(own, surroundings);
      CaseLibrary library = CaseLibrary.read(folders);
      if (folder.value() != null && library.empty()) {
        throw Failure.of(
            ExitCode.NO_INPUT,
            "there are no cases in " + folder.value(),
            "it needs two folders: rules, named after the rules, and exercises");
      }
      return library;
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the cases in " + folders + " cannot be read");
    }
  }

  private List<Path> folders(Path own, Surroundings surroundings) throws IOException {
    if (folder.value() != null) {
      return List.of(RulesFolder.of(folder.value()));
    }
    List<Path> folders = new ArrayList<>();
    if (own == null || RulebookReader.extendsShipped(own)) {
      folders.add(RulesFolder.shipped(surroundings).resolveSibling("cases"));
    }
    if (own != null) {
      folders.add(RulesFolder.cases(own));
    }
    return folders;
  }

  /** The same, where each of them has to be readable. */
  public CaseLibrary sound(Path own, Surroundings surroundings) {
    CaseLibrary library = of(own, surroundings);
    if (!library.faults().isEmpty()) {
      throw faulty(library.faults());
    }
    return library;
  }

  /** What is told of a case whose changes cannot be made. */
  public Failure unusable(RuleCase.Unusable unusable) {
    return faulty(
        List.of(
            new RuleFault(
                "cases/rules",
                0,
                "",
                "a change in a case does not work: " + unusable.getMessage(),
                "see all of them: hornbook rules check")));
  }

  private Failure faulty(List<RuleFault> faults) {
    return RuleFaultsFound.in(folder.value() == null ? "the cases" : folder.value(), faults);
  }
}
