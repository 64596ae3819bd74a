package hornbook.cli;

import hornbook.assessment.Fault;
import hornbook.rulebook.FolderRules;
import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Practice;
import hornbook.rulebook.PracticeReader;
import hornbook.rulebook.RuleBaseFaulty;
import hornbook.rulebook.Rulebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Which rules are held to: those of the program or others, as a local practice has them. */
final class RulesOption {
  private final Value<String> practice;
  private final Value<Boolean> acceptLessSafe;
  private final Value<String> folder;
  private final Value<Boolean> trust;

  RulesOption(Arguments arguments) {
    practice =
        arguments.text(
            "FILE",
            "a local practice: limits of a yard, college or country, its notes, law and numbers",
            "--practice");
    acceptLessSafe =
        arguments.flag(
            "--accept-less-safe", "let the practice move limits toward less safety, and mark it");
    folder =
        arguments.text(
            "DIR", "rules of your own, whole or added to those of the program", "--rules");
    trust =
        arguments.flag(
            "--trust-rules", "you trust whoever wrote the rules of DIR: they run as a program");
  }

  /** The folder of own rules; null where those of the program are meant. */
  Path folder() {
    if (folder.value() == null) {
      return null;
    }
    try {
      return Path.of(folder.value());
    } catch (InvalidPathException noName) {
      throw Failure.of(ExitCode.NO_INPUT, "no folder can have the name " + folder.value());
    }
  }

  /** The rules asked for. */
  Rules of(Surroundings surroundings) {
    Rules base = base(surroundings);
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

  private Rules base(Surroundings surroundings) {
    if (folder() == null) {
      if (trust.value()) {
        throw Failure.usage("--trust-rules without --rules DIR", "give both, or neither");
      }
      return surroundings.rules();
    }
    if (!trust.value()) {
      throw Failure.usage(
          "rules are turned into a program and run, so those of "
              + folder.value()
              + " can do to this computer whatever you can",
          "if you trust whoever wrote them, add --trust-rules");
    }
    LoadedRules loaded = load(folder(), surroundings);
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

  /**
   * The rules of a folder, ready to fire.
   *
   * @throws Failure with code 65 and all faults, or 66 where there is no such folder
   */
  static LoadedRules load(Path folder, Surroundings surroundings) {
    if (!Files.isDirectory(folder)) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "there is no folder " + folder,
          "begin one: hornbook rules new TOPIC --dir " + folder);
    }
    try {
      return FolderRules.load(folder, kept(surroundings));
    } catch (RuleBaseFaulty faulty) {
      throw RuleFaultsFound.in(folder, faulty.faults());
    } catch (IOException unreadable) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "the rules of " + folder + " cannot be read",
          "look whether this user may read all files in it");
    }
  }

  /** Where compiled rules are kept for this user; null where there is no place for it. */
  private static Path kept(Surroundings surroundings) {
    String given = surroundings.environment().getOrDefault("XDG_CACHE_HOME", "");
    String home = surroundings.environment().getOrDefault("HOME", "");
    String local = surroundings.environment().getOrDefault("LOCALAPPDATA", "");
    Path cache = null;
    if (!given.isEmpty()) {
      cache = Path.of(given);
    } else if (!home.isEmpty()) {
      cache = Path.of(home, ".cache");
    } else if (!local.isEmpty()) {
      cache = Path.of(local);
    }
    return cache == null || !cache.isAbsolute() ? null : cache.resolve("hornbook/rules");
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
