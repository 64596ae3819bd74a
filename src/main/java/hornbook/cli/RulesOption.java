package hornbook.cli;

import hornbook.assessment.Fault;
import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Practice;
import hornbook.rulebook.PracticeReader;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/** Which rules are held to: those of the program, changed by a local practice. */
final class RulesOption {
  private final Value<String> practice;
  private final Value<Boolean> acceptLessSafe;

  RulesOption(Arguments arguments) {
    practice =
        arguments.text(
            "FILE",
            "a local practice: limits of a yard, college or country, its notes, law and numbers",
            "--practice");
    acceptLessSafe =
        arguments.flag(
            "--accept-less-safe", "let the practice move limits toward less safety, and mark it");
  }

  /** The rules asked for. */
  Rules of(Surroundings surroundings) {
    Rules base = surroundings.rules();
    if (practice.value() == null) {
      if (acceptLessSafe.value()) {
        throw Failure.usage("--accept-less-safe without --practice FILE", "give both, or neither");
      }
      return base;
    }
    Practice local = read(base.book(), surroundings);
    return new Rules() {
      @Override
      public Rulebook book() {
        return base.book().under(local);
      }

      @Override
      public LoadedRules loaded() {
        LoadedRules loaded = base.loaded();
        return new LoadedRules(loaded.book().under(local), loaded.rules());
      }
    };
  }

  private Practice read(Rulebook book, Surroundings surroundings) {
    List<Fault> faults = new ArrayList<>();
    byte[] bytes = InputFile.read(practice.value(), surroundings);
    String name = InputFile.shown(practice.value());
    Practice local = PracticeReader.read(bytes, name, book, acceptLessSafe.value(), faults);
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound("a limit, its value and safe side: hornbook rules show");
      found.in(faults);
      found.stopIfAny();
    }
    return local;
  }
}
