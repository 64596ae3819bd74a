package hornbook.rulebook.fact;

import java.util.List;
import org.kie.api.definition.type.ClassReactive;

/**
 * A stretch of the ground edge of the wall, in the words of the assessment; a word not looked at is
 * null.
 */
@ClassReactive
public record Stretch(
    String side,
    String state,
    String moist,
    String damp,
    String mealy,
    double from,
    double to,
    String field)
    implements RowFact {
  /** The words rules may ask for, by name. */
  public static final List<String> WORDS = List.of("side", "state", "moist", "damp", "mealy");

  @Override
  public List<String> names() {
    return WORDS;
  }

  @Override
  public String word(String name) {
    return switch (name) {
      case "side" -> side;
      case "state" -> state;
      case "moist" -> moist;
      case "damp" -> damp;
      case "mealy" -> mealy;
      default -> throw new IllegalArgumentException(name);
    };
  }
}
