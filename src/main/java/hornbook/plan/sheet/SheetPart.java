package hornbook.plan.sheet;

/** The parts of a sheet, in order of work. */
public enum SheetPart {
  TO_HAND,
  FIRST_AID,
  DRESS,
  PREPARE,
  NAILS,
  SHOE,
  BUILD,
  EFFECT,
  CLOCK,
  GROWTH,
  OWNER,
  VET,
  TROT;

  /** Its key in JSON. */
  public String key() {
    StringBuilder key = new StringBuilder();
    boolean capital = false;
    for (char letter : name().toCharArray()) {
      if (letter == '_') {
        capital = true;
      } else {
        key.append(capital ? letter : Character.toLowerCase(letter));
        capital = false;
      }
    }
    return key.toString();
  }
}
