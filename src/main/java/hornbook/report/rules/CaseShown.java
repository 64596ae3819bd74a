package hornbook.report.rules;

/**
 * The case that fires a rule.
 *
 * @param file the path to give to a command
 * @param nearMiss the one change that silences the rule, as {@code path=value}
 */
public record CaseShown(String title, String file, String nearMiss) {}
