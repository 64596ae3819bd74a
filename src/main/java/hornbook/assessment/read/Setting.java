package hornbook.assessment.read;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Member;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Place;
import hornbook.assessment.tree.PlainScalar;
import hornbook.assessment.tree.Unreadable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One field changed from the command line: {@code feet[left-fore].signs.digitalPulse=bounding}. The
 * value is a word, number, text or list ({@code [toe, nail]}); {@code unknown} takes the field out.
 */
public record Setting(String text) {
  private static final String SHAPE = "path=value, such as feet[0].signs.hoofHeat=true";

  /** What the user wrote behind {@code --set}; its faults come with those of the file. */
  public static Setting parse(String text) {
    return new Setting(text);
  }

  /** The tree with this change made; the tree itself where the setting makes no sense. */
  LocatedValue applyTo(LocatedValue tree, int number, List<Fault> faults) {
    int equals = text.indexOf('=');
    FieldPath path = equals < 0 ? null : FieldPath.parse(text.substring(0, equals).strip());
    Place place = new Place(Place.SETTING, number, 1);
    if (path == null) {
      faults.add(Fault.at(place, "", Fault.quote(text), SHAPE));
      return tree;
    }
    Change change = new Change(place, path, text.substring(equals + 1).strip());
    try {
      return change.made(tree, "", 0);
    } catch (Unreadable refused) {
      faults.add(refused.fault());
      return tree;
    }
  }

  /** A change on its way down the tree. */
  private record Change(Place place, FieldPath path, String value) {
    LocatedValue made(LocatedValue here, String at, int step) {
      if (step == path.steps().size()) {
        return value(at);
      }
      if (path.steps().get(step) instanceof FieldPath.Name name) {
        return inGroup(here, at, name.key(), step);
      }
      return inList(here, at, step);
    }

    private LocatedValue inGroup(LocatedValue here, String at, String key, int step) {
      Map<String, Member> members = new LinkedHashMap<>();
      if (here instanceof Group group) {
        members.putAll(group.members());
      }
      Member old = members.get(key);
      LocatedValue inner =
          made(old == null ? null : old.value(), LocatedValue.under(at, key), step + 1);
      if (inner == null) {
        members.remove(key);
      } else {
        members.put(key, new Member(old == null ? place : old.key(), inner));
      }
      return new Group(here instanceof Group ? here.place() : place, at, members);
    }

    private LocatedValue inList(LocatedValue here, String at, int step) {
      List<LocatedValue> items = new ArrayList<>();
      if (here instanceof Items list) {
        items.addAll(list.items());
      }
      int row = row(items, at, path.steps().get(step));
      String inner = at + "[" + row + "]";
      LocatedValue old =
          row < items.size() ? items.get(row) : newRow(inner, path.steps().get(step));
      LocatedValue changed = made(old, inner, step + 1);
      if (row < items.size()) {
        items.remove(row);
      }
      if (changed != null) {
        items.add(row, changed);
      }
      return new Items(here instanceof Items ? here.place() : place, at, items).moved(at);
    }

    private int row(List<LocatedValue> items, String at, FieldPath.Step step) {
      if (step instanceof FieldPath.OfLimb foot) {
        for (int i = 0; i < items.size(); i++) {
          boolean sought =
              items.get(i) instanceof Group group
                  && group.get("limb") instanceof Scalar limb
                  && foot.limb().spelt(limb.text());
          if (sought) {
            return i;
          }
        }
        return items.size();
      }
      int row = ((FieldPath.Index) step).number();
      if (row > items.size()) {
        String found = "row " + row + " of a list of " + items.size();
        String allowed = "rows 0 to " + items.size() + ", counted from 0; the last adds a row";
        throw new Unreadable(Fault.at(place, at + "[" + row + "]", found, allowed));
      }
      return row;
    }

    /** A foot that is named and was not there comes with its name. */
    private LocatedValue newRow(String at, FieldPath.Step step) {
      if (!(step instanceof FieldPath.OfLimb foot)) {
        return null;
      }
      String path = LocatedValue.under(at, "limb");
      Scalar limb = new Scalar(place, path, foot.limb().word(), Token.TEXT);
      return new Group(place, at, Map.of("limb", new Member(place, limb)));
    }

    private LocatedValue value(String at) {
      if (value.startsWith("[") && value.endsWith("]")) {
        List<LocatedValue> items = new ArrayList<>();
        String inside = value.substring(1, value.length() - 1).strip();
        for (String item : inside.isEmpty() ? new String[0] : inside.split(",", -1)) {
          items.add(scalar(item.strip(), at + "[" + items.size() + "]"));
        }
        return new Items(place, at, items);
      }
      return value.equals(LocatedValue.UNKNOWN) ? null : scalar(value, at);
    }

    private Scalar scalar(String written, String at) {
      boolean quoted =
          written.length() > 1
              && (written.startsWith("\"") && written.endsWith("\"")
                  || written.startsWith("'") && written.endsWith("'"));
      return quoted
          ? new Scalar(place, at, written.substring(1, written.length() - 1), Token.TEXT)
          : new Scalar(place, at, written, PlainScalar.token(written));
    }
  }
}
