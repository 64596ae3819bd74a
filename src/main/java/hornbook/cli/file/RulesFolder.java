package hornbook.cli.file;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.rulebook.compile.FolderRules;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A folder of rules that the user named. */
public final class RulesFolder {
  private RulesFolder() {}

  public static Path of(String named) {
    try {
      return Path.of(named);
    } catch (InvalidPathException noName) {
      throw Failure.of(ExitCode.NO_INPUT, "no folder can have the name " + named);
    }
  }

  /**
   * The rules of a folder, ready to fire.
   *
   * @param trusted whether the user trusts whoever wrote them
   * @throws Failure with code 65 and all faults, or 66 where there is no such folder
   */
  public static LoadedRules load(String named, boolean trusted, Surroundings surroundings) {
    if (!trusted) {
      throw Failure.usage(
          "the advice would rest on the rules of " + named + ", and wrong ones can hurt a horse",
          "if you trust whoever wrote them, add --trust-rules");
    }
    Path folder = existing(named);
    try {
      return loaded(folder, surroundings);
    } catch (RuleBaseFaulty faulty) {
      throw RuleFaultsFound.in(folder, faulty.faults());
    } catch (IOException unreadable) {
      throw unreadable(named);
    }
  }

  /** The rules of a folder whose authors the user trusts, ready to fire. */
  public static LoadedRules loaded(Path folder, Surroundings surroundings)
      throws IOException, RuleBaseFaulty {
    return FolderRules.load(folder, kept(surroundings));
  }

  /** The folder of that name, which has to be there. */
  public static Path existing(String named) {
    Path folder = of(named);
    if (!Files.isDirectory(folder)) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "there is no folder " + named,
          "begin one: hornbook rules new TOPIC --dir " + named);
    }
    return folder;
  }

  public static Failure unreadable(String named) {
    return Failure.of(
        ExitCode.NO_INPUT,
        "the rules of " + named + " cannot be read",
        "check that this user may read every file in it");
  }

  /** The folder of the rules the program comes with. */
  public static Path shipped(Surroundings surroundings) {
    Path home = surroundings.home();
    return home == null ? Path.of("rules") : home.resolve("rules");
  }

  /** Where the cases of a folder of rules lie: in it, or for a whole rule base beside it. */
  public static Path cases(Path own) throws IOException {
    Path inside = own.resolve("cases");
    boolean beside = !Files.isDirectory(inside) && !RulebookReader.extendsShipped(own);
    return beside ? own.toAbsolutePath().resolveSibling("cases") : inside;
  }

  /** Where rules that were read are kept for this user; null where there is no place for it. */
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
}
