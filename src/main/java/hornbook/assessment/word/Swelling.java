package hornbook.assessment.word;

/** How far up the limb is swollen. */
public enum Swelling implements Word {
  NONE,
  PASTERN,
  ABOVE_FETLOCK
}
