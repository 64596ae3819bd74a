package hornbook.advice;

import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;

/** Whether a reading lies so near a limit that measuring again by hand could turn it over. */
public final class Closeness {
  private Closeness() {}

  public static boolean close(FactSheet sheet, Reading reading, Limit limit) {
    Limit error =
        switch (limit.unit()) {
          case "mm" -> sheet.limits().get("error.length");
          case "deg" -> sheet.limits().get("error.angle");
          default -> null;
        };
    return error != null
        && reading.exact()
        && Math.abs(reading.low() - limit.value()) <= error.value();
  }
}
