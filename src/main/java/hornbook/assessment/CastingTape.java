package hornbook.assessment;

/**
 * Casting tape: width, roll length and thickness of one layer in mm, and how many rolls; null is
 * unknown.
 */
public record CastingTape(Double width, Double rollLength, Double layerThickness, Integer rolls) {}
