package hornbook.rulebook.file;

import hornbook.assessment.tree.Nearest;
import hornbook.rulebook.RuleEntry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Gathers what is wrong in a rule base, and knows where in its files every part stands. */
public final class FaultCollector {
  private record Place(String file, int line) {}

  private final List<RuleFault> all = new ArrayList<>();
  private final Map<Object, Place> places = new IdentityHashMap<>();
  private int dropped;

  /** The list itself, for readers of one file, who know their own place. */
  public List<RuleFault> all() {
    return all;
  }

  /** Whether a file could not be read at all. */
  public boolean unreadable() {
    return all.stream().anyMatch(RuleFault::unreadable);
  }

  /** Whether every rule could be read: only then can something be missed. */
  public boolean whole() {
    return dropped == 0;
  }

  /** Whether something was found wrong with what bears this name: more would follow from that. */
  public boolean named(String name) {
    return all.stream().anyMatch(fault -> fault.rule().equals(name));
  }

  /** Notes a rule that had to be left out. */
  public void drop() {
    dropped++;
  }

  /** Notes where a part stands. */
  public void place(Object part, String file, int line) {
    places.put(part, new Place(file, line));
  }

  /** Notes that one part stands where another did. */
  public void moved(Object from, Object to) {
    if (places.containsKey(from)) {
      places.put(to, places.get(from));
    }
  }

  /** A fault of a part whose place was noted. */
  public void at(Object part, String name, String says, String cure) {
    Place place = places.getOrDefault(part, new Place("", 0));
    all.add(new RuleFault(place.file(), place.line(), name, says, cure));
  }

  public void at(RuleEntry rule, String says, String cure) {
    all.add(new RuleFault(rule.file(), rule.line(), rule.id(), says, cure));
  }

  /** Ends a cure with the nearest known word, where one is near. */
  public static String nearest(String cure, String word, Collection<String> known) {
    String nearest = Nearest.of(word, List.copyOf(known));
    if (nearest == null) {
      return cure;
    }
    return (cure.isEmpty() ? "" : cure + "; ") + "did you mean " + nearest + "?";
  }
}
