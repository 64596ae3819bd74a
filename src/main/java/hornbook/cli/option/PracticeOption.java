package hornbook.cli.option;

import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.base.RuleSource;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.rulebook.Practice;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.practice.PracticeReader;
import java.util.ArrayList;
import java.util.List;

/** The local practice that rules are held to. */
public final class PracticeOption {
  private final ArgumentValue<String> file;
  private final ArgumentValue<Boolean> acceptLessSafe;

  public PracticeOption(Arguments arguments) {
    file =
        arguments.text(
            "FILE",
            "a local practice: limits of a yard, college or country, its notes, law and numbers",
            "--practice");
    acceptLessSafe =
        arguments.flag(
            "--accept-less-safe", "let the practice make limits less safe, and mark each one");
  }

  boolean given() {
    return file.value() != null || acceptLessSafe.value();
  }

  /** A rule base as the practice has it. */
  public LoadedRules on(LoadedRules rules, Surroundings surroundings) {
    Practice local = read(rules.book(), surroundings);
    return local == null ? rules : rules.under(rules.book().under(local));
  }

  /** Rules as the practice has them; a practice is read and checked against them at once. */
  public RuleSource on(RuleSource rules, Surroundings surroundings) {
    Practice local = read(file.value() == null ? null : rules.book(), surroundings);
    if (local == null) {
      return rules;
    }
    return new RuleSource() {
      @Override
      public Rulebook book() {
        return rules.book().under(local);
      }

      @Override
      public LoadedRules loaded() {
        LoadedRules loaded = rules.loaded();
        return loaded.under(loaded.book().under(local));
      }
    };
  }

  /** The practice; null where none is given, and then the rule base is not looked at. */
  private Practice read(Rulebook book, Surroundings surroundings) {
    if (file.value() == null) {
      if (acceptLessSafe.value()) {
        throw Failure.usage("--accept-less-safe without --practice FILE", "give both, or neither");
      }
      return null;
    }
    List<Fault> faults = new ArrayList<>();
    byte[] bytes = InputFile.read(file.value(), null, surroundings);
    String name = InputFile.shown(file.value());
    Practice local = PracticeReader.read(bytes, name, book, acceptLessSafe.value(), faults);
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound("a limit, its value and safe side: hornbook rules show");
      found.in(faults);
      found.stopIfAny();
    }
    return local;
  }
}
