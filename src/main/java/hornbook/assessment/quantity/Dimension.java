package hornbook.assessment.quantity;

/** What a quantity measures. */
public enum Dimension {
  LENGTH("a length"),
  ANGLE("an angle"),
  MASS("a weight"),
  TEMPERATURE("a temperature");

  private final String phrase;

  Dimension(String phrase) {
    this.phrase = phrase;
  }

  /** In plain words: "a length". */
  public String phrase() {
    return phrase;
  }

  /** The unit the records keep this dimension in. */
  public Unit kept() {
    return switch (this) {
      case LENGTH -> Unit.MM;
      case ANGLE -> Unit.DEGREE;
      case MASS -> Unit.KILOGRAM;
      case TEMPERATURE -> Unit.CELSIUS;
    };
  }
}
