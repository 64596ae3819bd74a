package hornbook.study.exercise;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileTree;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Reads what a learner has answered, YAML or JSON, and checks every word of it. */
public final class AnswerReader {
  private static final List<String> KEYS = List.of("format", "case", "by", "feet");

  private final Vocabulary known;
  private final List<Foot> feet;
  private final Entries entries;

  /**
   * A reader of answers on one assessment.
   *
   * @param feet those of the assessment
   */
  public AnswerReader(Vocabulary known, List<Foot> feet, List<Fault> faults) {
    this.known = known;
    this.feet = feet;
    this.entries = new Entries(faults);
  }

  /** The answer in a file; of use only where no fault was found. */
  public static LearnerAnswer read(
      byte[] bytes, String shown, Vocabulary known, List<Foot> feet, List<Fault> faults) {
    LocatedValue tree = FileTree.read(bytes, shown, "an answer", faults);
    return tree == null ? null : new AnswerReader(known, feet, faults).answer(tree);
  }

  /** The answer in a tree, wherever that came from. */
  LearnerAnswer answer(LocatedValue tree) {
    Group whole = entries.group(tree, KEYS);
    if (whole == null) {
      return null;
    }
    if (Entries.given(whole, "format") == null) {
      entries.missing(whole, "format", LearnerAnswer.FORMAT);
    }
    entries.word(whole, "format", List.of(LearnerAnswer.FORMAT));
    LocatedValue rows = Entries.given(whole, "feet");
    if (rows == null) {
      entries.missing(whole, "feet", "an entry for each foot answered");
    }
    List<FootAnswer> answered = new ArrayList<>();
    for (LocatedValue row : rows == null ? List.<LocatedValue>of() : Entries.items(rows)) {
      Group one = entries.group(row, FootAnswer.KEYS);
      if (one != null) {
        add(foot(one), one, answered);
      }
    }
    return new LearnerAnswer(
        entries.text(whole, "by"), entries.text(whole, "case"), List.copyOf(answered));
  }

  private void add(FootAnswer foot, Group row, List<FootAnswer> to) {
    boolean twice = to.stream().anyMatch(one -> one.limb() == foot.limb());
    if (twice && foot.limb() != null) {
      entries.refuse(row, "a second answer on the " + foot.limb().word(), "one for a foot", null);
    }
    to.add(foot);
  }

  /** What was answered on one foot. */
  FootAnswer foot(Group one) {
    List<String> limbs = feet.stream().map(Foot::limb).map(Limb::word).toList();
    String written = entries.word(one, "limb", limbs);
    if (Entries.given(one, "limb") == null && feet.size() == 1) {
      written = limbs.get(0);
    } else if (Entries.given(one, "limb") == null) {
      entries.missing(one, "limb", String.join(", ", limbs));
    }
    int at = Math.max(0, limbs.indexOf(written));
    return new FootAnswer(
        written == null ? null : ExerciseReader.limb(written),
        entries.words(one, "findings", known.findings()),
        entries.word(one, "vet", Vocabulary.URGENCIES),
        entries.words(one, "vetFor", known.referrals()),
        entries.word(one, "technique", known.techniquesOrNone()),
        because(one),
        ruledOut(one),
        entries.words(one, "supports", known.supports()),
        entries.words(one, "cautions", known.cautions()),
        ask(one, at),
        days(one),
        entries.text(one, "departs"));
  }

  private List<String> because(Group one) {
    LocatedValue value = Entries.given(one, "because");
    if (value == null) {
      return null;
    }
    List<String> reasons = new ArrayList<>();
    for (LocatedValue item : Entries.items(value)) {
      String text = item instanceof Scalar scalar ? scalar.text().strip() : "";
      if (text.isEmpty()) {
        entries.refuse(item, item.kind(), "ids of rules, such as N003, or words", null);
      } else {
        reasons.add(reason(item, text));
      }
    }
    return reasons.stream().distinct().toList();
  }

  private String reason(LocatedValue item, String text) {
    String id = text.toUpperCase(Locale.ROOT);
    if (FootAnswer.rule(id) && !known.rules().contains(id)) {
      entries.refuse(
          item, item.kind(), "the id of a rule, or words", Nearest.of(id, known.rules()));
    }
    return FootAnswer.rule(id) ? id : text;
  }

  private Map<String, List<String>> ruledOut(Group one) {
    LocatedValue value = Entries.given(one, "ruledOut");
    if (value == null) {
      return null;
    }
    List<String> either =
        Stream.concat(known.techniques().stream(), known.supports().stream()).toList();
    Map<String, List<String>> ruledOut = new LinkedHashMap<>();
    if (value instanceof Group group) {
      entries.group(group, either);
      group.members().forEach((id, member) -> ruledOut.put(id, rules(group, id)));
    } else {
      entries.words(value, either).forEach(id -> ruledOut.put(id, List.of()));
    }
    return ruledOut;
  }

  private List<String> rules(Group group, String id) {
    List<String> rules = entries.words(group, id, known.rules());
    return rules == null ? List.of() : rules;
  }

  private List<String> ask(Group one, int foot) {
    LocatedValue value = Entries.given(one, "ask");
    if (value == null) {
      return null;
    }
    List<String> paths = new ArrayList<>();
    for (LocatedValue item : Entries.items(value)) {
      String text = item instanceof Scalar scalar ? scalar.text().strip() : "";
      String path = text.isEmpty() ? null : AskedFields.path(text, feet, foot);
      if (path == null) {
        String nearest = AskableFields.nearest(text);
        entries.refuse(item, item.kind(), "a field, such as signs.digitalPulse", nearest);
      } else {
        paths.add(path);
      }
    }
    return paths.stream().distinct().toList();
  }

  private Double days(Group one) {
    LocatedValue value = Entries.given(one, "nextVisit");
    if (value == null) {
      return null;
    }
    String text = value instanceof Scalar scalar ? scalar.text().strip() : "";
    Double days = DaysUntilVisit.of(text);
    if (days == null) {
      entries.refuse(value, value.kind(), DaysUntilVisit.ALLOWED, null);
    }
    return days;
  }
}
