package hornbook.assessment.word;

/** How the cartilages feel a finger's breadth above the coronary band at the quarters. */
public enum Cartilages implements Word {
  SOFT,
  HARD
}
