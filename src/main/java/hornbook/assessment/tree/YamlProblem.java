package hornbook.assessment.tree;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What is wrong with a text that is not YAML, in plain words. */
final class YamlProblem {
  static final String OPEN_QUOTE = "a quote that is not closed";

  /** How the parser's own words begin, and ours for them. */
  private static final String[][] WORDS = {
    {"found character '\\t(TAB)'", "a tab at the start of a line; indent with spaces"},
    {"found character", "a character no value can begin with; put the value in quotes"},
    {"mapping values are not allowed", "a second colon on the line, or a line set in too far"},
    {"could not find expected ':'", "a line without a colon after its name"},
    {"sequence entries are not allowed", "a dash where no list can begin"},
    {"mapping keys are not allowed", "a name where none can stand"},
    {"expected ',' or '}'", "a brace { that is not closed, or a comma left out"},
    {"expected ',' or ']'", "a bracket [ that is not closed, or a comma left out"},
    {"found unexpected end of stream", OPEN_QUOTE},
    {"found unknown escape character", "a backslash that means nothing between double quotes"},
    {"expected <block end>", "a line set in differently from those it belongs to"},
    {"expected the node content", "a comma or bracket where a value should stand"},
    {"expected '<document start>'", "more after the end"},
    {"unexpected character found", "a name for a repeat (& or *) that is none"},
    {"expected alphabetic", "a name for a repeat (& or *) that is none"}
  };

  /** What a file should hold instead. */
  static final String ALLOWED = "lines of name: value, set in with spaces";

  private YamlProblem() {}

  static String found(MarkedYamlEngineException malformed) {
    String problem = String.valueOf(malformed.getProblem());
    String found = "text that is not YAML";
    for (String[] words : WORDS) {
      if (problem.startsWith(words[0])) {
        found = words[1];
        break;
      }
    }
    Mark begun = malformed.getContextMark().orElse(null);
    Mark here = malformed.getProblemMark().orElse(begun);
    boolean above = begun != null && begun.getLine() != here.getLine();
    return above ? found + " (begun at line " + (begun.getLine() + 1) + ")" : found;
  }
}
