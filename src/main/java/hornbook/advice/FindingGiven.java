package hornbook.advice;

import hornbook.rulebook.fact.Cited;
import java.util.List;

/** A finding on the foot, with the rule that made it. */
public record FindingGiven(
    String id, boolean defect, String rule, Says says, List<Cited> because, List<String> sources) {}
