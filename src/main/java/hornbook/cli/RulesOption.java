package hornbook.cli;

import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Rulebook;
import java.nio.file.Path;

/** Which rules are held to: those of the program or others, as a local practice has them. */
final class RulesOption {
  private final PracticeOption practice;
  private final Value<String> folder;
  private final Value<Boolean> trust;

  RulesOption(Arguments arguments) {
    practice = new PracticeOption(arguments);
    folder =
        arguments.text(
            "DIR", "rules of your own, whole or added to those of the program", "--rules");
    trust =
        arguments.flag(
            "--trust-rules", "you trust whoever wrote the rules of DIR: they run as a program");
  }

  /** The folder of own rules; null where those of the program are meant. */
  Path folder() {
    return folder.value() == null ? null : RulesFolder.of(folder.value());
  }

  /** Whether other rules are asked for than those of the program as they are. */
  boolean given() {
    return practice.given() || folder.value() != null || trust.value();
  }

  /** The rules asked for. */
  Rules of(Surroundings surroundings) {
    return practice.on(base(surroundings), surroundings);
  }

  private Rules base(Surroundings surroundings) {
    if (folder.value() == null) {
      if (trust.value()) {
        throw Failure.usage("--trust-rules without --rules DIR", "give both, or neither");
      }
      return surroundings.rules();
    }
    LoadedRules loaded = RulesFolder.load(folder.value(), trust.value(), surroundings);
    return new Rules() {
      @Override
      public Rulebook book() {
        return loaded.book();
      }

      @Override
      public LoadedRules loaded() {
        return loaded;
      }
    };
  }
}
