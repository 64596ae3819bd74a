package hornbook.assessment;

/** The chemistry of the adhesive in the van. */
public enum Adhesive implements Word {
  ACRYLIC,
  URETHANE
}
