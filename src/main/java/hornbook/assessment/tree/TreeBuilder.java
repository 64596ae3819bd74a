package hornbook.assessment.tree;

import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Member;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Builds the tree of a file from what a parser meets, and keeps it within bounds. */
final class TreeBuilder {
  static final int DEEPEST = 32;
  static final int MOST_VALUES = 20_000;
  static final int LONGEST_KEY = 100;

  private final List<Fault> faults;
  private final Deque<Frame> open = new ArrayDeque<>();
  private LocatedValue root;
  private int values;

  TreeBuilder(List<Fault> faults) {
    this.faults = faults;
  }

  /** The whole tree; null before it is complete. */
  LocatedValue root() {
    return root;
  }

  boolean atKey() {
    return !open.isEmpty() && open.peek().members != null && open.peek().key == null;
  }

  void key(String key, Place place) {
    if (key.length() > LONGEST_KEY) {
      String allowed = "a name of at most " + LONGEST_KEY + " letters";
      throw new Unreadable(Fault.at(place, open.peek().path, Fault.quote(key), allowed));
    }
    open.peek().key = key;
    open.peek().keyPlace = place;
  }

  void openGroup(Place place) {
    push(new Frame(place, path(), new LinkedHashMap<>(), null));
  }

  void openList(Place place) {
    push(new Frame(place, path(), null, new ArrayList<>()));
  }

  private void push(Frame frame) {
    refuseBelow(open.size(), frame.place, frame.path);
    open.push(frame);
  }

  LocatedValue close() {
    Frame frame = open.pop();
    LocatedValue value =
        frame.members != null
            ? new Group(frame.place, frame.path, frame.members)
            : new Items(frame.place, frame.path, frame.items);
    return add(value);
  }

  LocatedValue scalar(String text, Token token, Place place) {
    return add(new Scalar(place, path(), text, token));
  }

  /** Adds a value that stands elsewhere in the file as well. */
  void again(LocatedValue value) {
    refuseDeeper(value, open.size());
    values += size(value) - 1;
    add(value.moved(path()));
  }

  private LocatedValue add(LocatedValue value) {
    values++;
    if (values > MOST_VALUES) {
      String found = "more than " + MOST_VALUES + " values";
      throw new Unreadable(Fault.at(value.place(), value.path(), found, "at most that many"));
    }
    Frame frame = open.peek();
    if (frame == null) {
      root = value;
    } else if (frame.items != null) {
      frame.items.add(value);
    } else {
      addMember(frame, value);
    }
    return value;
  }

  private void addMember(Frame frame, LocatedValue value) {
    Member member = new Member(frame.keyPlace, value);
    Member first = frame.members.putIfAbsent(frame.key, member);
    if (first != null) {
      Place at = first.key();
      String found =
          "a second "
              + Fault.quote(frame.key)
              + ", first at line "
              + at.line()
              + ", column "
              + at.column();
      faults.add(Fault.at(frame.keyPlace, value.path(), found, "each field once"));
    }
    frame.key = null;
  }

  private static int size(LocatedValue value) {
    int size = 1;
    if (value instanceof Items list) {
      for (LocatedValue item : list.items()) {
        size = Math.min(MOST_VALUES, size + size(item));
      }
    } else if (value instanceof Group group) {
      for (Member member : group.members().values()) {
        size = Math.min(MOST_VALUES, size + size(member.value()));
      }
    }
    return size;
  }

  private static void refuseDeeper(LocatedValue value, int depth) {
    if (value instanceof Scalar) {
      return;
    }
    refuseBelow(depth, value.place(), value.path());
    if (value instanceof Items list) {
      list.items().forEach(item -> refuseDeeper(item, depth + 1));
    } else if (value instanceof Group group) {
      group.members().values().forEach(member -> refuseDeeper(member.value(), depth + 1));
    }
  }

  private static void refuseBelow(int depth, Place place, String path) {
    if (depth >= DEEPEST) {
      String found = "more than " + DEEPEST + " levels, one in another";
      throw new Unreadable(Fault.at(place, path, found, "at most " + DEEPEST));
    }
  }

  /** The path of the next value; inside a case file paths begin at its assessment. */
  private String path() {
    Frame frame = open.peek();
    if (frame == null) {
      return "";
    }
    if (frame.items != null) {
      return frame.path + "[" + frame.items.size() + "]";
    }
    boolean caseFile = open.size() == 1 && FileTree.ASSESSMENT.equals(frame.key);
    return caseFile ? "" : LocatedValue.under(frame.path, frame.key);
  }

  private static final class Frame {
    private final Place place;
    private final String path;
    private final Map<String, Member> members;
    private final List<LocatedValue> items;
    private String key;
    private Place keyPlace;

    Frame(Place place, String path, Map<String, Member> members, List<LocatedValue> items) {
      this.place = place;
      this.path = path;
      this.members = members;
      this.items = items;
    }
  }
}
