package hornbook.cli;

import hornbook.assessment.Fault;
import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Practice;
import hornbook.rulebook.PracticeReader;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;

/** The local practice that rules are held to. */
final class PracticeOption {
  private final Value<String> file;
  private final Value<Boolean> acceptLessSafe;

  PracticeOption(Arguments arguments) {
    file =
        arguments.text(
            "FILE",
            "a local practice: limits of a yard, college or country, its notes, law and numbers",
            "--practice");
    acceptLessSafe =
        arguments.flag(
            "--accept-less-safe", "let the practice move limits toward less safety, and mark it");
  }

  boolean given() {
    return file.value() != null || acceptLessSafe.value();
  }

  /** A rule base as the practice has it. */
  LoadedRules on(LoadedRules rules, Surroundings surroundings) {
    Practice local = read(rules.book(), surroundings);
    return local == null ? rules : rules.under(rules.book().under(local));
  }

  /** Rules as the practice has them; a practice is read and held against them at once. */
  Rules on(Rules rules, Surroundings surroundings) {
    Practice local = read(file.value() == null ? null : rules.book(), surroundings);
    if (local == null) {
      return rules;
    }
    return new Rules() {
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
