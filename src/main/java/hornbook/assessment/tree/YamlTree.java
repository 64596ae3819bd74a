package hornbook.assessment.tree;

import hornbook.assessment.tree.LocatedValue.Token;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** The tree of a YAML file: one document, no tags of its own, repeats (anchors) within bounds. */
public final class YamlTree {
  private final String file;
  private final TreeBuilder builder;
  private final Map<String, LocatedValue> repeatable = new HashMap<>();
  private final Deque<String> anchors = new ArrayDeque<>();

  private YamlTree(String file, TreeBuilder builder) {
    this.file = file;
    this.builder = builder;
  }

  /**
   * @throws Unreadable when the text is not YAML, or out of bounds
   */
  public static LocatedValue read(String text, String file, String wanted, List<Fault> faults) {
    YamlTree tree = new YamlTree(file, new TreeBuilder(faults));
    // One read of the whole text: the scanner copies all it has looked ahead with each read.
    LoadSettings settings =
        LoadSettings.builder()
            .setCodePointLimit(FileText.LARGEST + 1)
            .setBufferSize(text.length() + 1)
            .build();
    StreamReader reader = new StreamReader(settings, text);
    try {
      tree.readAll(new ParserImpl(settings, reader));
    } catch (MarkedYamlEngineException malformed) {
      Mark mark = malformed.getProblemMark().or(malformed::getContextMark).orElse(null);
      throw tree.unreadable(
          tree.place(Optional.ofNullable(mark)), YamlProblem.found(malformed), YamlProblem.ALLOWED);
    } catch (NumberFormatException cut) {
      // What the library makes of a numbered sign that the end of the text cuts off.
      throw tree.unreadable(
          tree.place(reader.getMark()), YamlProblem.OPEN_QUOTE, YamlProblem.ALLOWED);
    } catch (YamlEngineException malformed) {
      throw tree.unreadable(new Place(file, 1, 1), "text that is not YAML", YamlProblem.ALLOWED);
    }
    if (tree.builder.root() == null) {
      throw tree.unreadable(new Place(file, 1, 1), "an empty file", wanted);
    }
    return tree.builder.root();
  }

  private void readAll(ParserImpl parser) {
    int documents = 0;
    while (parser.hasNext()) {
      Event event = parser.next();
      switch (event.getEventId()) {
        case DocumentStart -> {
          documents++;
          if (documents > 1) {
            throw unreadable(place(event.getStartMark()), "a second document", "one in each file");
          }
        }
        case Scalar -> scalar((ScalarEvent) event);
        case Alias -> alias((AliasEvent) event);
        case MappingStart, SequenceStart -> start((CollectionStartEvent) event);
        case MappingEnd, SequenceEnd -> end();
        default -> {}
      }
    }
  }

  private void start(CollectionStartEvent event) {
    Place place = place(event.getStartMark());
    refuseTag(event.getTag(), place);
    if (builder.atKey()) {
      throw unreadable(place, "a group or list as a key", "a word");
    }
    anchors.push(anchor(event));
    if (event.getEventId() == Event.ID.MappingStart) {
      builder.openGroup(place);
    } else {
      builder.openList(place);
    }
  }

  private void end() {
    remember(anchors.pop(), builder.close());
  }

  private void scalar(ScalarEvent event) {
    Place place = place(event.getStartMark());
    refuseTag(event.getTag(), place);
    String text = event.getValue();
    if (builder.atKey()) {
      builder.key(text, place);
    } else {
      Token token = event.isPlain() ? PlainScalar.token(text) : Token.TEXT;
      remember(anchor(event), builder.scalar(text, token, place));
    }
  }

  private void alias(AliasEvent event) {
    Place place = place(event.getStartMark());
    String name = event.getAlias().getValue();
    LocatedValue value = repeatable.get(name);
    if (value == null || builder.atKey()) {
      throw unreadable(
          place, "*" + name, "a repeat, as a value, of something complete marked &" + name);
    }
    builder.again(value);
  }

  private static String anchor(NodeEvent event) {
    return event.getAnchor().map(Anchor::getValue).orElse("");
  }

  private void remember(String anchor, LocatedValue value) {
    if (!anchor.isEmpty()) {
      repeatable.put(anchor, value);
    }
  }

  private void refuseTag(Optional<String> tag, Place place) {
    if (tag.isPresent()) {
      throw unreadable(place, "the tag " + Fault.quote(tag.get()), "values without tags");
    }
  }

  private Place place(Optional<Mark> mark) {
    return mark.map(at -> new Place(file, at.getLine() + 1, at.getColumn() + 1))
        .orElseGet(() -> new Place(file, 1, 1));
  }

  private Unreadable unreadable(Place place, String found, String allowed) {
    return new Unreadable(Fault.at(place, "", found, allowed));
  }
}
