package hornbook.assessment.tree;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value as it was read, before it is checked, with its place and its path. Paths begin at the
 * assessment: {@code feet[0].signs.digitalPulse}, also inside a case file.
 */
public sealed interface LocatedValue {
  /** The word that may stand in every field, and says that it was not looked at. */
  public static final String UNKNOWN = "unknown";

  Place place();

  String path();

  /** What kind of value it is, in plain words. */
  String kind();

  /** The same value under another path. */
  LocatedValue moved(String path);

  /** A single value. */
  record Scalar(Place place, String path, String text, Token token) implements LocatedValue {
    @Override
    public String kind() {
      return token == Token.NOTHING ? "nothing" : Fault.quote(text);
    }

    @Override
    public Scalar moved(String to) {
      return new Scalar(place, to, text, token);
    }

    /** True for an empty value and for the word {@code unknown}. */
    public boolean unknown() {
      return token == Token.NOTHING || token == Token.TEXT && text.equals(UNKNOWN);
    }
  }

  /** A list. */
  record Items(Place place, String path, List<LocatedValue> items) implements LocatedValue {
    public Items {
      items = Collections.unmodifiableList(items);
    }

    @Override
    public String kind() {
      return items.isEmpty() ? "an empty list" : "a list";
    }

    @Override
    public Items moved(String to) {
      List<LocatedValue> moved = new ArrayList<>(items.size());
      for (LocatedValue item : items) {
        moved.add(item.moved(to + "[" + moved.size() + "]"));
      }
      return new Items(place, to, moved);
    }
  }

  /** A group of named values, in the order of the file. */
  record Group(Place place, String path, Map<String, Member> members) implements LocatedValue {
    public Group {
      members = Collections.unmodifiableMap(members);
    }

    @Override
    public String kind() {
      return "a group of fields";
    }

    @Override
    public Group moved(String to) {
      Map<String, Member> moved = new LinkedHashMap<>();
      members.forEach((key, member) -> moved.put(key, member.moved(under(to, key))));
      return new Group(place, to, moved);
    }

    /** The value under a key, or null. */
    public LocatedValue get(String key) {
      Member member = members.get(key);
      return member == null ? null : member.value();
    }
  }

  /** A value in a group, and the place of its key. */
  record Member(Place key, LocatedValue value) {
    Member moved(String to) {
      return new Member(key, value.moved(to));
    }
  }

  /** How a single value was written. */
  enum Token {
    TEXT,
    NUMBER,
    FLAG,
    NOTHING
  }

  /** The path of a key in a group. */
  static String under(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The value at a path below this one, or null. */
  default LocatedValue at(FieldPath path) {
    LocatedValue here = this;
    for (FieldPath.Step step : path.steps()) {
      if (step instanceof FieldPath.Name name && here instanceof Group group) {
        here = group.get(name.key());
      } else if (step instanceof FieldPath.Index index
          && here instanceof Items list
          && index.number() < list.items().size()) {
        here = list.items().get(index.number());
      } else {
        return null;
      }
    }
    return here;
  }
}
