package hornbook.cli;

import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Rulebook;

/** Where the commands get the rules from. */
interface Rules {
  /** What the rules say, without what fires them. */
  Rulebook book();

  /** The rules ready to fire. */
  LoadedRules loaded();
}
