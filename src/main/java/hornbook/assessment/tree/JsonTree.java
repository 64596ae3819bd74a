package hornbook.assessment.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import hornbook.assessment.tree.LocatedValue.Token;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** The tree of a JSON file. */
final class JsonTree {
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(TreeBuilder.DEEPEST + 1)
                  .maxStringLength(FileText.LARGEST)
                  .maxNameLength(FileText.LARGEST)
                  .maxNumberLength(FileText.LARGEST)
                  .build())
          .build();

  private JsonTree() {}

  /**
   * @throws Unreadable when the text is not JSON, or out of bounds
   */
  static LocatedValue read(String text, String file, List<Fault> faults) {
    TreeBuilder builder = new TreeBuilder(faults);
    try (JsonParser parser = JSON.createParser(text)) {
      while (parser.nextToken() != null) {
        Place place = place(parser.currentTokenLocation(), file);
        if (builder.root() != null) {
          throw new Unreadable(Fault.at(place, "", "more after the end", "one in each file"));
        }
        add(parser, builder, place);
      }
    } catch (JsonProcessingException malformed) {
      Place place = place(malformed.getLocation(), file);
      throw new Unreadable(Fault.at(place, "", found(malformed.getOriginalMessage()), "JSON"));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return builder.root();
  }

  private static void add(JsonParser parser, TreeBuilder builder, Place place) throws IOException {
    JsonToken token = parser.currentToken();
    switch (token) {
      case START_OBJECT -> builder.openGroup(place);
      case START_ARRAY -> builder.openList(place);
      case END_OBJECT, END_ARRAY -> builder.close();
      case FIELD_NAME -> builder.key(parser.currentName(), place);
      case VALUE_STRING -> builder.scalar(parser.getText(), Token.TEXT, place);
      case VALUE_TRUE, VALUE_FALSE -> builder.scalar(parser.getText(), Token.FLAG, place);
      case VALUE_NULL -> builder.scalar("", Token.NOTHING, place);
      default -> builder.scalar(parser.getText(), Token.NUMBER, place);
    }
  }

  private static Place place(JsonLocation at, String file) {
    boolean known = at != null && at.getLineNr() > 0;
    return known
        ? new Place(file, at.getLineNr(), Math.max(1, at.getColumnNr()))
        : new Place(file, 1, 1);
  }

  private static String found(String problem) {
    if (problem.startsWith("Unexpected end-of-input")) {
      return "the end, with a brace, bracket or quote still open";
    }
    if (problem.startsWith("Unrecognized token")) {
      return "a bare word; put words in double quotes";
    }
    if (problem.startsWith("Unexpected character ('}'")
        || problem.startsWith("Unexpected character (']'")) {
      return "a closing brace or bracket too soon, often after one comma too many";
    }
    if (problem.startsWith("Unexpected character")) {
      return "a character out of place: a comma, colon or double quote is missing before it";
    }
    if (problem.startsWith("Illegal unquoted character")) {
      return "a line break or tab inside double quotes";
    }
    return "text that is not JSON";
  }
}
