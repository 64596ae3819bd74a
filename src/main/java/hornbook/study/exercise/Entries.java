package hornbook.study.exercise;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.Nearest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Takes words and texts out of a file. What is wrong becomes a fault with its place, what is
 * allowed and the nearest known word; then null is given, as it is for what is left out.
 */
public final class Entries {
  private static final int LONGEST = 4000;
  private static final int FEW = 20;

  private final List<Fault> faults;

  public Entries(List<Fault> faults) {
    this.faults = faults;
  }

  /** The value under a key that says something: null where it is left out, empty or unknown. */
  public static LocatedValue given(Group group, String key) {
    LocatedValue value = group.get(key);
    return value instanceof Scalar scalar && scalar.unknown() ? null : value;
  }

  /** One of a few words; null where it is left out. */
  public String word(Group group, String key, List<String> known) {
    LocatedValue value = given(group, key);
    return value == null ? null : word(value, known);
  }

  private String word(LocatedValue value, List<String> known) {
    String text = value instanceof Scalar scalar ? scalar.text().strip() : null;
    if (text == null || !known.contains(text)) {
      String nearest = text == null ? null : Nearest.of(text, known);
      refuse(value, value.kind(), listed(known), nearest);
      return null;
    }
    return text;
  }

  /** The words of a list, each once; none for {@code none}; null where it is left out. */
  public List<String> words(Group group, String key, List<String> known) {
    LocatedValue value = given(group, key);
    return value == null ? null : words(value, known);
  }

  /** The same of a value at hand. */
  public List<String> words(LocatedValue value, List<String> known) {
    List<String> words = new ArrayList<>();
    for (LocatedValue item : items(value)) {
      String word = word(item, known);
      if (word != null && !words.contains(word)) {
        words.add(word);
      }
    }
    return Collections.unmodifiableList(words);
  }

  /** The texts of a list; null where it is left out. */
  public List<String> texts(Group group, String key) {
    LocatedValue value = given(group, key);
    if (value == null) {
      return null;
    }
    List<String> texts = new ArrayList<>();
    for (LocatedValue item : items(value)) {
      String text = text(item);
      if (text != null && !text.isEmpty()) {
        texts.add(text);
      }
    }
    return Collections.unmodifiableList(texts);
  }

  /** The entries of a list; a single value is a list of one, {@code none} an empty one. */
  public static List<LocatedValue> items(LocatedValue value) {
    if (value instanceof Items list) {
      return list.items();
    }
    boolean none = value instanceof Scalar scalar && scalar.text().strip().equals(Vocabulary.NONE);
    return none ? List.of() : List.of(value);
  }

  /** A text, on one line whatever its lines were; null where it is left out. */
  public String text(Group group, String key) {
    LocatedValue value = given(group, key);
    return value == null ? null : text(value);
  }

  private String text(LocatedValue value) {
    String text = value instanceof Scalar scalar ? scalar.text().strip() : null;
    if (text == null || text.length() > LONGEST) {
      String found = text == null ? value.kind() : "a text of " + text.length() + " letters";
      refuse(value, found, "a text of up to " + LONGEST + " letters", null);
      return null;
    }
    return text.replaceAll("\\s*\\R\\s*", " ").replaceAll("\\p{Cntrl}", " ");
  }

  /** A group of fields; null, with a fault, where it is none. */
  public Group group(LocatedValue value, List<String> keys) {
    if (!(value instanceof Group group)) {
      refuse(value, value.kind(), "a group of fields: " + String.join(", ", keys), null);
      return null;
    }
    group
        .members()
        .forEach(
            (key, member) -> {
              if (!keys.contains(key)) {
                add(
                    member.key(),
                    path(group, key),
                    "the unknown field \"" + key + '"',
                    String.join(", ", keys),
                    Nearest.of(key, keys));
              }
            });
    return group;
  }

  /** What has to be there and is not. */
  public void missing(Group group, String key, String allowed) {
    add(group.place(), path(group, key), "nothing", allowed, null);
  }

  public void refuse(LocatedValue value, String found, String allowed, String nearest) {
    add(value.place(), value.path(), found, allowed, nearest);
  }

  private void add(
      hornbook.assessment.tree.Place place,
      String path,
      String found,
      String allowed,
      String nearest) {
    faults.add(
        new Fault(place.file(), place.line(), place.column(), path, found, allowed, nearest));
  }

  private static String path(Group group, String key) {
    return group.path().isEmpty() ? key : group.path() + "." + key;
  }

  private static String listed(List<String> known) {
    return known.size() <= FEW
        ? String.join(", ", known)
        : "one of " + known.size() + " words, such as " + known.get(0) + ", " + known.get(1);
  }
}
