package hornbook.rulebook.file;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Place;
import hornbook.assessment.tree.Unreadable;
import hornbook.assessment.tree.YamlTree;
import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A mapping in one of the rule base's YAML files, read with a place for everything: whatever is
 * missing, unknown or of the wrong kind becomes a fault with its line.
 */
public final class YamlMap {
  private static final String UNKEYED = "keys with values are expected here";
  private static final String LOOK_AT = "look at the colons, quotes and indents, here and above";
  private static final String KEYED = "write key: value, one a line, as its neighbours do";

  private final Group group;
  private final String owner;
  private final List<RuleFault> faults;

  private YamlMap(Group group, String owner, List<RuleFault> faults) {
    this.group = group;
    this.owner = owner;
    this.faults = faults;
  }

  /** The file as one mapping; empty, with a fault, if it is none. */
  public static YamlMap file(String file, String text, List<RuleFault> faults) {
    LocatedValue root = root(file, text, faults);
    if (root instanceof Group group) {
      return new YamlMap(group, "", faults);
    }
    if (root != null) {
      faults.add(new RuleFault(file, 1, "", UNKEYED, KEYED));
    }
    return new YamlMap(nothing(new Place(file, 0, 0)), "", faults);
  }

  /** The file as a list of mappings. */
  public static List<YamlMap> list(String file, String text, List<RuleFault> faults) {
    LocatedValue root = root(file, text, faults);
    List<YamlMap> maps = new ArrayList<>();
    if (root instanceof Items list) {
      for (LocatedValue one : list.items()) {
        if (one instanceof Group group) {
          String id = group.get("id") instanceof Scalar scalar ? scalar.text() : "";
          maps.add(new YamlMap(group, id, faults));
        } else {
          faults.add(new RuleFault(file, one.place().line(), "", UNKEYED, KEYED));
        }
      }
    } else if (root != null) {
      faults.add(
          new RuleFault(file, 1, "", "a list is expected here", "begin every entry with a dash"));
    }
    return maps;
  }

  /** The tree of a file; null, with a fault, where no sense can be made of it. */
  private static LocatedValue root(String file, String text, List<RuleFault> faults) {
    List<Fault> found = new ArrayList<>();
    LocatedValue root = null;
    try {
      root = YamlTree.read(text, file, KEYED, found);
    } catch (Unreadable unreadable) {
      Fault fault = unreadable.fault();
      String says = RuleFault.UNREADABLE + " as YAML: " + fault.found();
      faults.add(new RuleFault(file, fault.line(), "", says, LOOK_AT));
    }
    for (Fault fault : found) {
      faults.add(new RuleFault(file, fault.line(), "", fault.found(), fault.allowed()));
    }
    return root;
  }

  private static Group nothing(Place place) {
    return new Group(place, "", Map.of());
  }

  public int line() {
    return group.place().line();
  }

  public int line(String key) {
    return has(key) ? group.members().get(key).key().line() : line();
  }

  public Iterable<String> keys() {
    return group.members().keySet();
  }

  public boolean has(String key) {
    return group.members().containsKey(key);
  }

  /** Whether a value other than null stands under the key. */
  public boolean states(String key) {
    return group.get(key) instanceof Scalar scalar && scalar.token() != Token.NOTHING;
  }

  /** The mapping under a key, naming the key in its faults. */
  public YamlMap map(String key) {
    if (group.get(key) instanceof Group inner) {
      return new YamlMap(inner, key, faults);
    }
    fault(line(key), key + " has to hold keys with values", KEYED);
    return new YamlMap(nothing(group.place()), key, faults);
  }

  public List<YamlMap> maps(String key) {
    List<YamlMap> maps = new ArrayList<>();
    if (group.get(key) instanceof Items list) {
      for (LocatedValue one : list.items()) {
        if (one instanceof Group inner) {
          maps.add(new YamlMap(inner, owner, faults));
        } else {
          fault(one.place().line(), "an entry of " + key + " has to hold keys with values", KEYED);
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
      fault(line(), key + " is missing", "write " + key + ": …");
      return "";
    }
    return text;
  }

  /** Text that may be left out: then null. */
  public String optional(String key) {
    LocatedValue value = group.get(key);
    if (value == null) {
      return null;
    }
    if (value instanceof Scalar scalar) {
      return scalar.text();
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
    LocatedValue value = group.get(key);
    if (value instanceof Items list) {
      for (LocatedValue one : list.items()) {
        if (one instanceof Scalar scalar) {
          texts.add(scalar.text());
        } else {
          fault(
              one.place().line(),
              "an entry of " + key + " has to be plain text",
              "put it in quotes");
        }
      }
    } else if (value != null) {
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
    faults.add(new RuleFault(group.place().file(), at, owner, says, cure));
  }
}
