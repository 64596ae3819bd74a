package hornbook.rulebook.read;

import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the one conclusion a rule inserts. */
final class ConclusionReader {
  private static final Pattern INSERT =
      Pattern.compile(
          "\\s*insert\\s*\\(\\s*(Finding|Referral|Reason|Caution)\\s*\\.\\s*(\\w+)\\s*\\(\\s*\"([^\"]*)\"((?:\\s*,\\s*\\$\\w+)*)\\s*\\)\\s*\\)\\s*;\\s*");
  private static final Map<String, Urgency> URGENCIES =
      Map.of(
          "now",
          Urgency.NOW,
          "today",
          Urgency.TODAY,
          "days",
          Urgency.DAYS,
          "mention",
          Urgency.MENTION);
  private static final Map<String, Bearing> BEARINGS =
      Map.of(
          "speaksFor", Bearing.FOR,
          "speaksAgainst", Bearing.AGAINST,
          "needs", Bearing.NEEDS,
          "needsVet", Bearing.NEEDS_VET,
          "rulesOut", Bearing.RULES_OUT);

  private ConclusionReader() {}

  static RuleConclusion read(String consequence) throws ConditionReader.Refused {
    Matcher insert = INSERT.matcher(consequence);
    if (!insert.matches()) {
      throw new ConditionReader.Refused(
          "after then stands exactly one insert( Finding|Referral|Reason|Caution . … ( \"name\", $facts ) );");
    }
    List<String> cites =
        Pattern.compile("\\$(\\w+)")
            .matcher(insert.group(4))
            .results()
            .map(m -> m.group(1))
            .toList();
    String manner = insert.group(2);
    String name = insert.group(3).trim();
    RuleConclusion outcome =
        switch (insert.group(1)) {
          case "Finding" -> manner.equals("of") ? new RuleConclusion.Finds(name, cites) : null;
          case "Caution" ->
              manner.equals("about") ? new RuleConclusion.Cautions(name, cites) : null;
          case "Referral" ->
              URGENCIES.containsKey(manner)
                  ? new RuleConclusion.Refers(URGENCIES.get(manner), name, cites)
                  : null;
          default ->
              BEARINGS.containsKey(manner)
                  ? new RuleConclusion.Reasons(
                      BEARINGS.get(manner), List.of(name.split(" ")), cites)
                  : null;
        };
    if (outcome == null) {
      throw new ConditionReader.Refused("there is no " + insert.group(1) + "." + manner);
    }
    return outcome;
  }
}
