package hornbook.rulebook.file;

import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A mapping in one of the rule base's YAML files, read with a place for everything: whatever is
 * missing, unknown or of the wrong kind becomes a fault with its line.
 */
public final class YamlMap {
  private static final String UNKEYED = "keys with values are expected here";
  private static final String KEYED = "write key: value, one a line, as its neighbours do";

  private final String file;
  private final int line;
  private final String owner;
  private final List<RuleFault> faults;
  private final Map<String, Node> values = new LinkedHashMap<>();
  private final Map<String, Integer> lines = new LinkedHashMap<>();

  private YamlMap(String file, MappingNode node, String owner, List<RuleFault> faults) {
    this.file = file;
    this.line = lineOf(node);
    this.owner = owner;
    this.faults = faults;
    for (NodeTuple tuple : node.getValue()) {
      String key = ((ScalarNode) tuple.getKeyNode()).getValue();
      lines.put(key, lineOf(tuple.getKeyNode()));
      if (values.put(key, tuple.getValueNode()) != null) {
        fault(lineOf(tuple.getKeyNode()), key + " stands here twice", "keep one");
      }
    }
  }

  /** The file as one mapping; empty, with a fault, if it is none. */
  public static YamlMap file(String file, String text, List<RuleFault> faults) {
    int before = faults.size();
    Optional<Node> root = root(file, text, faults);
    if (root.isPresent() && root.get() instanceof MappingNode mapping) {
      return new YamlMap(file, mapping, "", faults);
    }
    if (faults.size() == before) {
      faults.add(new RuleFault(file, 1, "", UNKEYED, KEYED));
    }
    return new YamlMap(file, emptyMapping(), "", faults);
  }

  /** The file as a list of mappings. */
  public static List<YamlMap> list(String file, String text, List<RuleFault> faults) {
    List<YamlMap> maps = new ArrayList<>();
    int before = faults.size();
    Optional<Node> root = root(file, text, faults);
    if (root.isPresent() && root.get() instanceof SequenceNode sequence) {
      for (Node node : sequence.getValue()) {
        if (node instanceof MappingNode mapping) {
          maps.add(new YamlMap(file, mapping, idOf(mapping), faults));
        } else {
          faults.add(new RuleFault(file, lineOf(node), "", UNKEYED, KEYED));
        }
      }
    } else if (faults.size() == before) {
      faults.add(
          new RuleFault(file, 1, "", "a list is expected here", "begin every entry with a dash"));
    }
    return maps;
  }

  private static Optional<Node> root(String file, String text, List<RuleFault> faults) {
    try {
      return new Compose(LoadSettings.builder().setLabel(file).build()).composeString(text);
    } catch (MarkedYamlEngineException unreadable) {
      int at = unreadable.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
      faults.add(
          new RuleFault(
              file,
              at,
              "",
              RuleFault.UNREADABLE + " as YAML",
              "look at the colons, quotes and indents, here and above"));
    } catch (YamlEngineException unreadable) {
      faults.add(
          new RuleFault(
              file, 0, "", RuleFault.UNREADABLE + " as YAML", "compare it with its neighbours"));
    }
    return Optional.empty();
  }

  /** The entry of a list is known by its id. */
  private static String idOf(MappingNode mapping) {
    for (NodeTuple tuple : mapping.getValue()) {
      if (tuple.getKeyNode() instanceof ScalarNode key
          && key.getValue().equals("id")
          && tuple.getValueNode() instanceof ScalarNode id) {
        return id.getValue();
      }
    }
    return "";
  }

  private static MappingNode emptyMapping() {
    return new MappingNode(
        org.snakeyaml.engine.v2.nodes.Tag.MAP,
        new ArrayList<>(),
        org.snakeyaml.engine.v2.common.FlowStyle.BLOCK);
  }

  private static int lineOf(Node node) {
    return node.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
  }

  public int line() {
    return line;
  }

  public int line(String key) {
    return lines.getOrDefault(key, line);
  }

  public Iterable<String> keys() {
    return values.keySet();
  }

  public boolean has(String key) {
    return values.containsKey(key);
  }

  /** Whether a value other than null stands under the key. */
  public boolean states(String key) {
    return values.get(key) instanceof ScalarNode scalar
        && !List.of("", "null", "~").contains(scalar.getValue());
  }

  /** The mapping under a key, naming the key in its faults. */
  public YamlMap map(String key) {
    Node node = values.get(key);
    if (node instanceof MappingNode mapping) {
      return new YamlMap(file, mapping, key, faults);
    }
    fault(line(key), key + " has to hold keys with values", KEYED);
    return new YamlMap(file, emptyMapping(), key, faults);
  }

  public List<YamlMap> maps(String key) {
    List<YamlMap> maps = new ArrayList<>();
    if (values.get(key) instanceof SequenceNode sequence) {
      for (Node node : sequence.getValue()) {
        if (node instanceof MappingNode mapping) {
          maps.add(new YamlMap(file, mapping, owner, faults));
        } else {
          fault(lineOf(node), "an entry of " + key + " has to hold keys with values", KEYED);
        }
      }
    } else if (has(key)) {
      fault(line(key), key + " has to be a list", "begin every entry with a dash");
    }
    return maps;
  }

  /** Text that has to be there. */
  public String text(String key) {
    String text = optional(key);
    if (text == null || text.isBlank()) {
      fault(line, key + " is missing", "write " + key + ": …");
      return "";
    }
    return text;
  }

  /** Text that may be left out: then null. */
  public String optional(String key) {
    Node node = values.get(key);
    if (node == null) {
      return null;
    }
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue();
    }
    fault(line(key), key + " has to be plain text", "put it in quotes");
    return "";
  }

  /** A number that has to be there; 0, with a fault, if it is none. */
  public double number(String key) {
    String text = text(key);
    try {
      return text.isEmpty() ? 0 : Double.parseDouble(text);
    } catch (NumberFormatException none) {
      fault(
          line(key),
          key + " has to be a number, not " + text,
          "write figures alone: the unit stands in unit");
      return 0;
    }
  }

  public boolean flag(String key, boolean otherwise) {
    String text = optional(key);
    if (text != null && !text.equals("true") && !text.equals("false")) {
      fault(line(key), key + " has to be true or false, not " + text, "write one of the two");
    }
    return text == null ? otherwise : text.equals("true");
  }

  public List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    Node node = values.get(key);
    if (node instanceof SequenceNode sequence) {
      for (Node one : sequence.getValue()) {
        if (one instanceof ScalarNode scalar) {
          texts.add(scalar.getValue());
        } else {
          fault(lineOf(one), "an entry of " + key + " has to be plain text", "put it in quotes");
        }
      }
    } else if (node != null) {
      fault(
          line(key),
          key + " has to be a list in square brackets",
          "write " + key + ": [one, other]");
    }
    return texts;
  }

  /**
   * The enum constant whose kebab-case name stands under the key; null, with a fault, if none does.
   */
  public <E extends Enum<E>> E word(String key, Class<E> type) {
    String word = optional(key);
    if (word == null) {
      return null;
    }
    List<String> known = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      String name = Word.kebab(constant.name());
      if (name.equals(word)) {
        return constant;
      }
      known.add(name);
    }
    fault(line(key), key + " cannot be " + word, "one of " + String.join(", ", known));
    return null;
  }

  /** Every key that is not one of these is a fault. */
  public void only(String... allowed) {
    for (String key : keys()) {
      if (!List.of(allowed).contains(key)) {
        fault(
            line(key),
            "the key " + key + " is not known here",
            "known are " + String.join(", ", allowed));
      }
    }
  }

  public void fault(int at, String says, String cure) {
    faults.add(new RuleFault(file, at, owner, says, cure));
  }
}
