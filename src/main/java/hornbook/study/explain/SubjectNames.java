package hornbook.study.explain;

import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.Nearest;
import hornbook.rulebook.NameSearch;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.study.explain.Subject.Kind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything that can be explained, by name. */
public final class SubjectNames {
  private static final int MOST_NEAR = 5;

  private final Map<Kind, Set<String>> ids = new EnumMap<>(Kind.class);
  private final Map<String, Subject> labels = new LinkedHashMap<>();
  private final Map<Subject, String> names = new LinkedHashMap<>();

  public SubjectNames(Rulebook book) {
    for (Kind kind : Kind.values()) {
      ids.put(kind, new LinkedHashSet<>());
    }
    for (RuleEntry rule : book.rules().values()) {
      ids.get(Kind.RULE).add(rule.id());
      if (rule.outcome() instanceof RuleConclusion.Refers refers) {
        ids.get(Kind.REFERRAL).add(refers.id());
      } else if (rule.outcome() instanceof RuleConclusion.Cautions cautions) {
        ids.get(Kind.CAUTION).add(cautions.id());
      }
    }
    add(Kind.TECHNIQUE, book.techniques());
    add(Kind.SUPPORT, book.supports());
    book.findings().values().forEach(one -> add(Kind.FINDING, one.id(), one.label()));
    Subjects.numbers().forEach(what -> add(Kind.MEASURE, what, Subjects.label(what)));
    Subjects.wordFields().forEach(what -> add(Kind.MEASURE, what, Subjects.label(what)));
  }

  private void add(Kind kind, List<NamedOption> all) {
    all.forEach(one -> add(kind, one.id(), one.label()));
  }

  private void add(Kind kind, String id, String label) {
    ids.get(kind).add(id);
    names.put(new Subject(kind, id), label);
    labels.putIfAbsent(label.toLowerCase(Locale.ROOT), new Subject(kind, id));
  }

  /** Every subject there is. */
  public List<Subject> all() {
    List<Subject> all = new ArrayList<>();
    ids.forEach((kind, own) -> own.forEach(id -> all.add(new Subject(kind, id))));
    return all;
  }

  /**
   * The subject of that name: an id, an id behind the word of its kind and a colon, the path of a
   * field, or a name in trade words.
   */
  public Optional<Subject> named(String text) {
    String name = text.strip();
    for (Kind kind : Kind.values()) {
      String before = kind.word() + ":";
      if (name.toLowerCase(Locale.ROOT).startsWith(before)) {
        return of(kind, name.substring(before.length()).strip());
      }
    }
    for (Kind kind : Kind.values()) {
      Optional<Subject> found = of(kind, name);
      if (found.isPresent()) {
        return found;
      }
    }
    Optional<Subject> field = field(name);
    return field.isPresent()
        ? field
        : Optional.ofNullable(labels.get(name.toLowerCase(Locale.ROOT)));
  }

  private Optional<Subject> of(Kind kind, String name) {
    String id = kind == Kind.RULE ? name.toUpperCase(Locale.ROOT) : name;
    return ids.get(kind).contains(id) ? Optional.of(new Subject(kind, id)) : Optional.empty();
  }

  private Optional<Subject> field(String path) {
    if (Fields.at(path) == null && Fields.ofFoot(path) == null) {
      return Optional.empty();
    }
    List<FieldPath.Step> steps = FieldPath.parse(path).steps();
    FieldPath.Step last = steps.get(steps.size() - 1);
    return last instanceof FieldPath.Name name ? of(Kind.MEASURE, name.key()) : Optional.empty();
  }

  /** Those in whose id or name each of the words stands, where none has it for its whole name. */
  public List<Subject> meant(String text) {
    List<Subject> meant = new ArrayList<>();
    ids.forEach(
        (kind, own) -> {
          List<NamedOption> all =
              own.stream().map(id -> new NamedOption(id, label(kind, id))).toList();
          NameSearch.find(text, all).forEach(one -> meant.add(new Subject(kind, one.id())));
        });
    return meant;
  }

  /** What pages call it; its id where they have no name for it. */
  public String label(Subject subject) {
    return label(subject.kind(), subject.id());
  }

  private String label(Kind kind, String id) {
    return names.getOrDefault(new Subject(kind, id), id);
  }

  /** Known names near one that is not known: a slip away, or with the same words in them. */
  public List<String> near(String text) {
    List<String> known = new ArrayList<>();
    ids.values().forEach(known::addAll);
    Set<String> near = new LinkedHashSet<>();
    String nearest = Nearest.of(text, known);
    if (nearest != null) {
      near.add(nearest);
    }
    String sought = text.strip().toLowerCase(Locale.ROOT);
    if (sought.length() > 2) {
      known.stream().filter(id -> id.toLowerCase(Locale.ROOT).contains(sought)).forEach(near::add);
      labels.forEach(
          (label, subject) -> {
            if (label.contains(sought)) {
              near.add(subject.id());
            }
          });
    }
    return near.stream().limit(MOST_NEAR).toList();
  }
}
