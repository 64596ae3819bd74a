package hornbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;

/** The parts of a sheet. */
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

  /** In order of work: a wrap is wound before it is nailed, and its shoe fitted to it. */
  public static List<SheetPart> of(Technique technique) {
    List<SheetPart> parts = new ArrayList<>(List.of(values()));
    if (technique == Technique.CAST_WRAP) {
      parts.remove(BUILD);
      parts.add(parts.indexOf(NAILS), BUILD);
    }
    return parts;
  }

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
