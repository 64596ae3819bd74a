package hornbook.assessment;

/** The section of the shoes carried: thickness and web width in mm; null is unknown. */
public record ShoeStock(Double thickness, Double webWidth) {}
