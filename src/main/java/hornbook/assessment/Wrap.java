package hornbook.assessment;

/** Casting tape: width, roll length and thickness of one layer in mm; null is unknown. */
public record Wrap(Double width, Double rollLength, Double layerThickness) {}
