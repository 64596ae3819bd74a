package hornbook.assessment.read;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Member;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Nearest;
import hornbook.assessment.tree.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Holds a tree against the table of fields, and builds the records from it. */
final class Checker {
  private final List<Fault> faults;
  private Units units = Units.MM;
  private final BareNumbers bare = new BareNumbers();

  Checker(List<Fault> faults) {
    this.faults = faults;
  }

  /** The assessment in a tree; of use only when no fault was found. */
  Assessment read(LocatedValue tree) {
    if (!(tree instanceof Group)) {
      refuse(tree, Fields.ASSESSMENT.allowed());
      return null;
    }
    boolean said = unitsOf((Group) tree);
    Assessment assessment = (Assessment) group(Fields.ASSESSMENT, tree);
    if (!said) {
      bare.refuse(faults);
    }
    CrossChecks.of(assessment, tree, faults);
    return assessment;
  }

  /** Takes up what the file says of its units; false where it says nothing of use. */
  private boolean unitsOf(Group tree) {
    for (Units one : Units.values()) {
      if (tree.get("units") instanceof Scalar said && one.spelt(said.text())) {
        units = one;
        return true;
      }
    }
    return false;
  }

  private Object read(Field field, LocatedValue value) {
    Kind kind = field.kind();
    if (kind instanceof FieldGroup group) {
      return group(group, value);
    }
    if (value == null || value instanceof Scalar scalar && scalar.unknown()) {
      return null;
    }
    if (kind instanceof FieldRows rows) {
      return rows(rows, value);
    }
    if (kind instanceof WordList words) {
      return words(words, value);
    }
    if (value instanceof Scalar scalar) {
      return scalar(field, scalar);
    }
    return refuse(value, allowed(field));
  }

  /** A record; an empty one where nothing was given. */
  private Object group(FieldHolder holder, LocatedValue value) {
    Group group = value instanceof Group given ? given : null;
    boolean nothing = value == null || value instanceof Scalar scalar && scalar.unknown();
    if (group == null && !nothing) {
      refuse(value, holder.allowed());
    }
    if (group != null) {
      refuseUnknownKeys(group, holder.names(), faults);
    }
    Object[] values = new Object[holder.fields().size()];
    for (int i = 0; i < values.length; i++) {
      Field field = holder.fields().get(i);
      LocatedValue member = group == null ? null : group.get(field.name());
      values[i] = read(field, member);
      if (field.required() && group != null) {
        require(field, group, member);
      }
    }
    return holder.shape().build(values);
  }

  private void require(Field field, Group group, LocatedValue member) {
    boolean missing = member == null || member instanceof Scalar scalar && scalar.unknown();
    if (missing) {
      Place place = member == null ? group.place() : member.place();
      String path = LocatedValue.under(group.path(), field.name());
      String found = member == null ? "nothing" : member.kind();
      faults.add(Fault.at(place, path, found, allowed(field)));
    }
  }

  /** Unknown will do wherever the field is not required. */
  private static String allowed(Field field) {
    String allowed = field.kind().allowed();
    return field.required() ? allowed : allowed + " or " + LocatedValue.UNKNOWN;
  }

  private List<Object> rows(FieldRows rows, LocatedValue value) {
    if (rows.emptyIsNone() && none(value)) {
      return List.of();
    }
    if (!(value instanceof Items list)) {
      refuse(value, rows.allowed());
      return null;
    }
    int count = list.items().size();
    if (count < rows.least() || count > rows.most()) {
      String found = count == 0 ? "an empty list" : "a list of " + count;
      faults.add(Fault.at(value.place(), value.path(), found, rows.allowed()));
    }
    if (count == 0) {
      return rows.emptyIsNone() ? List.of() : null;
    }
    List<Object> records = new ArrayList<>(count);
    for (LocatedValue item : list.items()) {
      if (!(item instanceof Group)) {
        refuse(item, "a group of fields: " + String.join(", ", rows.names()));
      }
      records.add(group(rows, item instanceof Group ? item : null));
    }
    return Collections.unmodifiableList(records);
  }

  private List<Object> words(WordList words, LocatedValue value) {
    if (none(value)) {
      return List.of();
    }
    List<LocatedValue> items = value instanceof Items list ? list.items() : List.of(value);
    List<Object> read = new ArrayList<>(items.size());
    for (LocatedValue item : items) {
      Object word =
          item instanceof Scalar scalar ? word(words, scalar) : refuse(item, words.allowed());
      if (word != null && !read.contains(word)) {
        read.add(word);
      }
    }
    return Collections.unmodifiableList(read);
  }

  private Object word(WordList words, Scalar scalar) {
    ScalarKind.Taken taken = words.each().take(scalar);
    if (taken instanceof ScalarKind.Taken.Value good) {
      return good.value();
    }
    String nearest = Nearest.of(scalar.text(), words.each().words());
    faults.add(Fault.at(scalar.place(), scalar.path(), scalar.kind(), words.allowed(), nearest));
    return null;
  }

  private static boolean none(LocatedValue value) {
    return value instanceof Scalar scalar
        && scalar.token() == Token.TEXT
        && scalar.text().equals(WordList.NONE);
  }

  private Object scalar(Field field, Scalar scalar) {
    ScalarKind.Taken taken =
        field.kind() instanceof Amount amount
            ? amount.take(bare.note(scalar, amount), units)
            : ((ScalarKind) field.kind()).take(scalar);
    if (taken instanceof ScalarKind.Taken.Refused no) {
      String meant = no.nearest() == null ? LikelyMeaning.of(field, scalar) : no.nearest();
      faults.add(Fault.at(scalar.place(), scalar.path(), no.found(), allowed(field), meant));
      return null;
    }
    return ((ScalarKind.Taken.Value) taken).value();
  }

  private Object refuse(LocatedValue value, String allowed) {
    faults.add(Fault.at(value.place(), value.path(), value.kind(), allowed));
    return null;
  }

  /** Reports every key of a group that is not among the known. */
  static void refuseUnknownKeys(Group group, List<String> known, List<Fault> faults) {
    String before = null;
    for (Map.Entry<String, Member> entry : group.members().entrySet()) {
      String key = entry.getKey();
      if (SplitAtComma.is(key, before, group)) {
        faults.add(SplitAtComma.fault(key, before, group));
      } else if (!known.contains(key)) {
        String path = LocatedValue.under(group.path(), key);
        String nearest = Nearest.of(key, known);
        String home = nearest == null ? FieldLocations.of(key) : nearest;
        String found = "the unknown field " + Fault.quote(key);
        Place place = entry.getValue().key();
        faults.add(Fault.at(place, path, found, String.join(", ", known), home));
      }
      before = key;
    }
  }
}
