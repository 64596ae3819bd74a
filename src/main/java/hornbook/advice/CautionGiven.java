package hornbook.advice;

import hornbook.rulebook.fact.Basis;
import java.util.List;

/** A warning that belongs to this foot, horse or material. */
public record CautionGiven(
    String id,
    Statement says,
    String rule,
    List<String> techniques,
    List<String> sources,
    Basis basis) {}
