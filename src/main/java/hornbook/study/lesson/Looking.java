package hornbook.study.lesson;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Finds what a learner asks to look at, and keeps what was asked for. */
final class Looking {
  private static final List<String> GROUPS =
      List.of("horse", "visit", "measures", "signs", "wall", "cracks", "kit");

  private final List<FieldValue> all;
  private final Set<String> looked = new LinkedHashSet<>();

  Looking(Assessment assessment) {
    this.all =
        Fields.values(assessment)
            .filter(one -> !one.path().endsWith(".limb") && !one.path().equals("format"))
            .filter(one -> !listed(one))
            .toList();
  }

  private static boolean listed(FieldValue field) {
    return field.field().kind() instanceof FieldRows
        && field.value() instanceof List<?> list
        && !list.isEmpty();
  }

  /** Every thing that can be asked for; rows of the wall and cracks by their lists. */
  List<FieldValue> askable() {
    return all.stream().filter(one -> !one.path().matches(".*\\.(wall|cracks)\\[.*")).toList();
  }

  /** Everything that was looked at by whoever wrote the case. */
  List<FieldValue> known() {
    return all.stream().filter(one -> one.value() != null).toList();
  }

  /** What was looked at so far, by path. */
  Set<String> looked() {
    return looked;
  }

  /** What goes by that name; empty where nothing does. */
  List<FieldValue> of(String written) {
    String sought = plain(written);
    List<FieldValue> found = new ArrayList<>();
    for (FieldValue field : all) {
      if (matches(field, sought)) {
        found.add(field);
        looked.add(field.path());
      }
    }
    return found;
  }

  private static boolean matches(FieldValue field, String sought) {
    String path = field.path().toLowerCase(Locale.ROOT);
    boolean group =
        GROUPS.contains(sought)
            && (path.startsWith(sought + ".") || path.matches(".*\\." + sought + "(\\[.*|\\..*)?"));
    return group
        || plain(field.field().name()).equals(sought)
        || plain(field.field().label()).equals(sought)
        || plain(field.path()).equals(sought)
        || plain(field.path().replaceFirst("^feet\\[\\d+]\\.", "")).equals(sought);
  }

  /** The nearest name to one that is not known, or null. */
  String nearest(String written) {
    List<String> names = new ArrayList<>(GROUPS);
    askable().forEach(one -> names.add(one.field().name()));
    askable().forEach(one -> names.add(one.field().label()));
    String nearest = Nearest.of(written, names);
    String sought = written.toLowerCase(Locale.ROOT);
    return nearest != null || sought.length() < 3
        ? nearest
        : names.stream()
            .filter(name -> name.toLowerCase(Locale.ROOT).contains(sought))
            .findFirst()
            .orElse(null);
  }

  /** Without capitals, spaces and hyphens. */
  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }
}
