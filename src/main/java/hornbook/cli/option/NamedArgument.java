package hornbook.cli.option;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.Failure;
import hornbook.rulebook.NameSearch;
import hornbook.rulebook.NamedOption;
import java.util.ArrayList;
import java.util.List;

/** A technique or a support as a user names it: by its id, or as the pages call it. */
public final class NamedArgument {
  private NamedArgument() {}

  /**
   * The id of the one that is meant.
   *
   * @param kind what it is to be: "technique"
   * @throws Failure where the words fit none, or several
   */
  public static String id(String text, String kind, List<NamedOption> all) {
    List<NamedOption> meant = NameSearch.find(text, all);
    if (meant.size() == 1) {
      return meant.get(0).id();
    }
    if (meant.size() > 1) {
      throw Failure.usage(
          "\"" + text + "\" could be any of " + meant.size() + ": name one",
          lines(meant).toArray(String[]::new));
    }
    List<String> then = new ArrayList<>();
    String nearest = nearest(text, all);
    if (nearest != null) {
      then.add("nearest: " + nearest);
    }
    then.add("by id or by name:");
    then.addAll(lines(all));
    throw Failure.usage("there is no " + kind + " \"" + text + "\"", then.toArray(String[]::new));
  }

  /** The same for what is kept for good: the whole id or the whole name, not a part of it. */
  public static String whole(String text, String kind, List<NamedOption> all) {
    List<NamedOption> meant = NameSearch.find(text, all);
    boolean called = NameSearch.called(text, all).isPresent();
    if (!called && !meant.isEmpty()) {
      List<String> then = new ArrayList<>(List.of("nearest: " + meant.get(0).id()));
      then.addAll(lines(meant));
      throw Failure.usage(
          "\"" + text + "\" is not the full name of a " + kind, then.toArray(String[]::new));
    }
    return id(text, kind, all);
  }

  private static String nearest(String text, List<NamedOption> all) {
    String id = Nearest.of(text, all.stream().map(NamedOption::id).toList());
    String label =
        id != null ? null : Nearest.of(text, all.stream().map(NamedOption::label).toList());
    return all.stream()
        .filter(one -> one.id().equals(id) || one.label().equals(label))
        .map(NamedOption::id)
        .findFirst()
        .orElse(null);
  }

  /** A line each, the ids in one column and the names in the next. */
  public static List<String> lines(List<NamedOption> all) {
    int widest = all.stream().mapToInt(one -> one.id().length()).max().orElse(0);
    return all.stream()
        .map(one -> "  " + one.id() + " ".repeat(widest - one.id().length() + 2) + one.label())
        .toList();
  }
}
