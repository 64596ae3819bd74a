package hornbook.advice;

import hornbook.rulebook.fact.CitedFact;
import java.util.List;

/** A finding on the foot, with the rule that made it. */
public record FindingGiven(
    String id,
    boolean defect,
    String rule,
    Statement says,
    List<CitedFact> because,
    List<String> sources) {}
