package hornbook.assessment;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What is wrong with a text that is not YAML, in plain words. */
final class YamlProblem {
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
    {"found unexpected end of stream", "a quote that is not closed"},
    {"found unknown escape character", "a backslash that means nothing between double quotes"},
    {"expected <block end>", "a line set in differently from those it belongs to"}
  };

  private YamlProblem() {}

  static String found(MarkedYamlEngineException malformed) {
    String problem = String.valueOf(malformed.getProblem());
    for (String[] words : WORDS) {
      if (problem.startsWith(words[0])) {
        return words[1];
      }
    }
    return "text that is not YAML";
  }
}
