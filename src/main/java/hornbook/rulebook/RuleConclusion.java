package hornbook.rulebook;

import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.List;

/** What a rule concludes when it fires; {@code cites} are the variables its conclusion rests on. */
public sealed interface RuleConclusion {
  List<String> cites();

  /** Gives a reading its name in the trade. */
  record Finds(String finding, List<String> cites) implements RuleConclusion {}

  /** Calls the vet. */
  record Refers(Urgency urgency, String id, List<String> cites) implements RuleConclusion {}

  /** Bears on techniques and supports. */
  record Reasons(Bearing bearing, List<String> subjects, List<String> cites)
      implements RuleConclusion {}

  /** Warns. */
  record Cautions(String id, List<String> cites) implements RuleConclusion {}
}
