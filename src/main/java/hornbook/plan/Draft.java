package hornbook.plan;

import hornbook.advice.Advice;
import hornbook.advice.ComputingLimits;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.foot.FootReadings;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.RulebookLacks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sheet while it is being written: what it is made from, and what has been written so far. A
 * sentence that needs a number nobody measured is not written; the measure is asked for instead.
 */
final class Draft {
  private final Advice advice;
  private final FootAdvice foot;
  private final Technique technique;
  private final PlanWishes wishes;
  private final FootReadings readings;
  private final Given given;
  private final Map<Part, List<Line>> lines = new EnumMap<>(Part.class);
  private final Map<String, Set<String>> missing = new LinkedHashMap<>();

  Draft(Advice advice, FootAdvice foot, Technique technique, PlanWishes wishes) {
    this.advice = advice;
    this.foot = foot;
    this.technique = technique;
    this.wishes = wishes;
    this.readings =
        FootReadings.of(advice.assessment(), assessed(), ComputingLimits.of(foot.sheet().limits()));
    this.given = new Given(advice.assessment(), assessed(), foot.index());
  }

  Assessment assessment() {
    return advice.assessment();
  }

  /** The foot as it was assessed. */
  Foot assessed() {
    return advice.assessment().feet().get(foot.index());
  }

  FootAdvice foot() {
    return foot;
  }

  Advice advice() {
    return advice;
  }

  Technique technique() {
    return technique;
  }

  PlanWishes wishes() {
    return wishes;
  }

  FootReadings readings() {
    return readings;
  }

  /** The measures as figures. */
  Given given() {
    return given;
  }

  boolean found(String finding) {
    return foot.findings().stream().anyMatch(one -> one.id().equals(finding));
  }

  /** Whether a support is to go with the technique. */
  boolean wished(String support) {
    return wishes.supports().contains(support);
  }

  /**
   * A limit of the trade as a figure.
   *
   * @throws RulebookLacks when the rule base has none for such a foot
   */
  Figure limit(String id) {
    return Figure.of(RulebookLacks.limit(foot.sheet().limits(), id));
  }

  /** A limit that something is multiplied by. */
  Figure times(String id) {
    Figure ratio = limit(id);
    return new Figure(
        ratio.label(), ratio.low(), ratio.high(), "", null, Map.of(), ratio.limit(), null);
  }

  /** Whether there is such a limit for a foot of this limb and age. */
  boolean limited(String id) {
    return foot.sheet().limits().containsKey(id);
  }

  /** Writes a sentence without holes. */
  void say(Part part, String id) {
    say(part, id, Map.of());
  }

  void say(Part part, String id, String name, Hole hole) {
    say(part, id, Map.of(name, hole));
  }

  /** Writes a sentence, or asks for what it needs. */
  void say(Part part, String id, Holes holes) {
    say(part, id, holes.all());
  }

  private void say(Part part, String id, Map<String, Hole> holes) {
    Line line = line(id, holes);
    if (line != null) {
      lines.computeIfAbsent(part, key -> new ArrayList<>()).add(line);
    }
  }

  /** A sentence; null when a number it needs is unknown, which is then asked for. */
  Line line(String id, Map<String, Hole> holes) {
    Instruction instruction = advice.rulebook().instructions().get(id);
    if (instruction == null) {
      throw new RulebookLacks("instruction " + id, "write it into its folder plan");
    }
    boolean whole = true;
    for (Hole hole : holes.values()) {
      whole &= !(hole instanceof Figure figure) || known(figure);
    }
    return whole ? new Line(instruction, holes) : null;
  }

  /** Whether the figure is known; if not, what it needs is asked for. */
  boolean known(Figure figure) {
    if (!figure.known()) {
      figure
          .missing()
          .forEach(field -> ask(field, field.equals(figure.field()) ? null : figure.label()));
    }
    return figure.known();
  }

  /** Asks for fields, saying for what. */
  void ask(Collection<String> fields, String wantedFor) {
    fields.forEach(field -> ask(field, wantedFor));
  }

  /** Asks for a field; null where what it is wanted for goes without saying. */
  void ask(String field, String wantedFor) {
    Set<String> wants = missing.computeIfAbsent(field, key -> new LinkedHashSet<>());
    if (wantedFor != null) {
      wants.add(wantedFor);
    }
  }

  Map<Part, List<Line>> lines() {
    return lines;
  }

  List<Missing> missing() {
    return missing.entrySet().stream()
        .map(one -> new Missing(one.getKey(), List.copyOf(one.getValue())))
        .toList();
  }
}
