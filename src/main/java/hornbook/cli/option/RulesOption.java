package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.base.RuleSource;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.RulesFolder;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.load.LoadedRules;
import java.nio.file.Path;

/** Which rules are held to: those of the program or others, as a local practice has them. */
public final class RulesOption {
  private final PracticeOption practice;
  private final ArgumentValue<String> folder;
  private final ArgumentValue<Boolean> trust;

  public RulesOption(Arguments arguments) {
    practice = new PracticeOption(arguments);
    folder =
        arguments.text(
            "DIR", "rules of your own, whole or added to those of the program", "--rules");
    trust =
        arguments.flag(
            "--trust-rules", "you trust whoever wrote the rules of DIR: the advice rests on them");
  }

  /** The folder of own rules; null where those of the program are meant. */
  public Path folder() {
    return folder.value() == null ? null : RulesFolder.of(folder.value());
  }

  /** Whether other rules are asked for than those of the program as they are. */
  public boolean given() {
    return practice.given() || folder.value() != null || trust.value();
  }

  /** The rules asked for. */
  public RuleSource of(Surroundings surroundings) {
    return practice.on(base(surroundings), surroundings);
  }

  private RuleSource base(Surroundings surroundings) {
    if (folder.value() == null) {
      if (trust.value()) {
        throw Failure.usage("--trust-rules without --rules DIR", "give both, or neither");
      }
      return surroundings.rules();
    }
    LoadedRules loaded = RulesFolder.load(folder.value(), trust.value(), surroundings);
    return new RuleSource() {
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
