package hornbook.cli.base;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.load.LoadedRules;

/** Where the commands get the rules from. */
public interface RuleSource {
  /** What the rules say, without what fires them. */
  Rulebook book();

  /** The rules ready to fire. */
  LoadedRules loaded();
}
