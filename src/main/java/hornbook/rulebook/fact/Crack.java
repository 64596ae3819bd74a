package hornbook.rulebook.fact;

import java.util.List;
import org.kie.api.definition.type.ClassReactive;

/** A crack in the wall, in the words of the assessment; a word that was not looked at is null. */
@ClassReactive
public record Crack(
    String place,
    String side,
    String starts,
    String depth,
    String bleeds,
    String moves,
    String seeps,
    String runs,
    String field)
    implements RowFact {
  /** The words rules may ask for, by name. */
  public static final List<String> WORDS =
      List.of("place", "side", "starts", "depth", "bleeds", "moves", "seeps", "runs");

  @Override
  public List<String> names() {
    return WORDS;
  }

  @Override
  public String word(String name) {
    return switch (name) {
      case "place" -> place;
      case "side" -> side;
      case "starts" -> starts;
      case "depth" -> depth;
      case "bleeds" -> bleeds;
      case "moves" -> moves;
      case "seeps" -> seeps;
      case "runs" -> runs;
      default -> throw new IllegalArgumentException(name);
    };
  }
}
