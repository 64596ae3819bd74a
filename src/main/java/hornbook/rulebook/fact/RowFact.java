package hornbook.rulebook.fact;

import java.util.List;

/** A fact of which a foot may have several alike, in words by name. */
public sealed interface RowFact extends CitedFact permits Crack, Stretch {
  /** The words rules may ask for, by name. */
  List<String> names();

  /** The word of this name; null where it was not looked at. */
  String word(String name);

  /** The path of the row in the file. */
  String field();
}
