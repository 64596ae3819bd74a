package hornbook.advice;

import hornbook.rulebook.fact.Reading;
import java.util.List;

/**
 * A number that was measured or computed.
 *
 * @param finding the name its value has in the trade, or null where no rule gives it one
 * @param says what the rule that named it says, or null
 */
public record MeasureGiven(
    Reading reading,
    String label,
    String unit,
    String finding,
    Statement says,
    List<String> sources) {}
