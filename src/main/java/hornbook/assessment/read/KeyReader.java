package hornbook.assessment.read;

import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileText;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.Nearest;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands under the keys of a group that is no part of an assessment. Whatever is missing,
 * unknown or of the wrong kind becomes a fault with its place; then null, or nothing, is given.
 */
public final class KeyReader {
  private static final int LONGEST = 400;

  private final Group group;
  private final List<Fault> faults;

  private KeyReader(Group group, List<Fault> faults) {
    this.group = group;
    this.faults = faults;
  }

  /** The keys of a group that may have these and no others; null, with a fault, if it is none. */
  public static KeyReader of(LocatedValue value, List<Fault> faults, String... known) {
    if (value instanceof Group group) {
      Checker.refuseUnknownKeys(group, List.of(known), faults);
      return new KeyReader(group, faults);
    }
    String allowed = "a group of fields: " + String.join(", ", known);
    faults.add(Fault.at(value.place(), value.path(), value.kind(), allowed));
    return null;
  }

  public boolean has(String key) {
    return scalar(key) != null
        || group.get(key) instanceof Items
        || group.get(key) instanceof Group;
  }

  /** The single value under a key that is not unknown, or null. */
  public Scalar scalar(String key) {
    return group.get(key) instanceof Scalar scalar && !scalar.unknown() ? scalar : null;
  }

  /** A text on one line that has to be there. */
  public String text(String key) {
    return text(key, true);
  }

  /** A text on one line that may be left out. */
  public String optional(String key) {
    return text(key, false);
  }

  private String text(String key, boolean required) {
    LocatedValue value = group.get(key);
    String allowed = "a text of up to " + LONGEST + " letters";
    if (value == null || value instanceof Scalar nothing && nothing.unknown()) {
      return required ? missing(key, allowed) : null;
    }
    String text = value instanceof Scalar scalar ? oneLine(scalar.text()) : "";
    if (text.isEmpty()
        || text.codePointCount(0, text.length()) > LONGEST
        || !text.codePoints().allMatch(FileText::printable)) {
      refuse(value, allowed, null);
      return null;
    }
    return text;
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s*\\R\\s*", " ");
  }

  /** What a kind of value makes of the value under a key; null where there is none. */
  public Object value(String key, ScalarKind kind, boolean required) {
    Scalar scalar = scalar(key);
    if (scalar == null) {
      if (group.get(key) != null && !(group.get(key) instanceof Scalar)) {
        refuse(group.get(key), kind.allowed(), null);
      } else if (required) {
        missing(key, kind.allowed());
      }
      return null;
    }
    ScalarKind.Taken taken = kind.take(scalar);
    if (taken instanceof ScalarKind.Taken.Refused no) {
      refuse(scalar, kind.allowed(), no.nearest());
      return null;
    }
    return ((ScalarKind.Taken.Value) taken).value();
  }

  /** One of a few words; null, with a fault, if it is none of them. */
  public String word(String key, List<String> words, boolean required) {
    Scalar scalar = scalar(key);
    if (scalar == null && (required || group.get(key) instanceof Items)) {
      return missing(key, listed(words));
    }
    if (scalar != null && !words.contains(scalar.text())) {
      refuse(scalar, listed(words), Nearest.of(scalar.text(), words));
      return null;
    }
    return scalar == null ? null : scalar.text();
  }

  private static String listed(List<String> words) {
    return words.size() <= 20
        ? String.join(", ", words)
        : "one of " + words.size() + " names: hornbook rules list, hornbook rules show";
  }

  /** The values of a list; none where there is none. */
  public List<LocatedValue> items(String key) {
    LocatedValue value = group.get(key);
    if (value instanceof Items list) {
      return list.items();
    }
    if (value != null && !(value instanceof Scalar nothing && nothing.unknown())) {
      refuse(value, "a list: every entry on a line that begins with a dash", null);
    }
    return new ArrayList<>();
  }

  /** Refuses the value under a key, or the group where there is none. */
  public void refuse(String key, String found, String allowed, String nearest) {
    LocatedValue value = group.get(key) == null ? group : group.get(key);
    String path = LocatedValue.under(group.path(), key);
    faults.add(Fault.at(value.place(), path, found, allowed, nearest));
  }

  private void refuse(LocatedValue value, String allowed, String nearest) {
    faults.add(Fault.at(value.place(), value.path(), value.kind(), allowed, nearest));
  }

  private String missing(String key, String allowed) {
    refuse(key, group.get(key) == null ? "nothing" : group.get(key).kind(), allowed, null);
    return null;
  }
}
