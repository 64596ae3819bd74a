package hornbook.rulebook.fact;

/**
 * A stretch of the ground edge of the wall, in the words of the assessment; a word not looked at is
 * null.
 */
public record Stretch(
    String side, String state, String moist, String damp, double from, double to, String field)
    implements CitedFact {}
