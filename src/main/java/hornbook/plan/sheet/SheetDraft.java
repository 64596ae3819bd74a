package hornbook.plan.sheet;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.foot.FootReadings;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Reserves;
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
public final class SheetDraft {
  private final Advice advice;
  private final FootAdvice foot;
  private final Technique technique;
  private final PlanWishes wishes;
  private final FootReadings readings;
  private final Foot assessed;
  private final Reserves reserves;
  private final Reserves moves;
  private final MeasuredFigures given;
  private final Map<SheetPart, List<SheetLine>> lines = new EnumMap<>(SheetPart.class);
  private final Map<String, Set<String>> missing = new LinkedHashMap<>();

  public SheetDraft(Advice advice, FootAdvice foot, Technique technique, PlanWishes wishes) {
    this.advice = advice;
    this.foot = foot;
    this.technique = technique;
    this.wishes = wishes;
    Foot noted = advice.assessment().feet().get(foot.index());
    this.readings = FootReadings.of(advice.assessment(), noted, foot.sheet().computing());
    this.assessed =
        AssessmentEdit.of("feet[" + foot.index() + "].wall")
            .with(advice.assessment(), readings.trim().off(noted.wall()))
            .feet()
            .get(foot.index());
    this.reserves = foot.reserves();
    this.moves = advice.moves();
    this.given = new MeasuredFigures(advice.assessment(), assessed, foot.index());
  }

  public Assessment assessment() {
    return advice.assessment();
  }

  /** The foot as it was assessed, its wall as the trim leaves it. */
  public Foot assessed() {
    return assessed;
  }

  public FootAdvice foot() {
    return foot;
  }

  public Advice advice() {
    return advice;
  }

  public Technique technique() {
    return technique;
  }

  public PlanWishes wishes() {
    return wishes;
  }

  public FootReadings readings() {
    return readings;
  }

  /** The measures as figures. */
  public MeasuredFigures given() {
    return given;
  }

  public boolean found(String finding) {
    return foot.findings().stream().anyMatch(one -> one.id().equals(finding));
  }

  /** What the calls for the vet hold back on this foot: no sentence of the sheet tells to do it. */
  public Reserves reserves() {
    return reserves;
  }

  /** What the calls of any foot forbid the horse to do: no sentence of the sheet asks for it. */
  public Reserves moves() {
    return moves;
  }

  /** Whether a call for the vet holds this cut back. */
  public boolean heldBack(Cut cut) {
    return reserves.cuts().contains(cut);
  }

  /** Whether a support is to go with the technique. */
  public boolean wished(String support) {
    return wishes.supports().contains(support);
  }

  /**
   * A limit of the trade as a figure.
   *
   * @throws MissingFromRulebook when the rule base has none for such a foot
   */
  public Figure limit(String id) {
    return Figure.of(MissingFromRulebook.limit(foot.sheet().limits(), id));
  }

  /** A limit that something is multiplied by. */
  public Figure times(String id) {
    Figure ratio = limit(id);
    return new Figure(
        ratio.label(), ratio.low(), ratio.high(), "", null, Map.of(), ratio.limit(), null);
  }

  /** Whether there is such a limit for a foot of this limb and age. */
  public boolean limited(String id) {
    return foot.sheet().limits().containsKey(id);
  }

  /** Writes a sentence without holes. */
  public void say(SheetPart part, String id) {
    say(part, id, Map.of());
  }

  public void say(SheetPart part, String id, String name, Placeholder hole) {
    say(part, id, Map.of(name, hole));
  }

  /** Writes a sentence, or asks for what it needs. */
  public void say(SheetPart part, String id, Placeholders holes) {
    say(part, id, holes.all());
  }

  private void say(SheetPart part, String id, Map<String, Placeholder> holes) {
    Instruction instruction = instruction(id);
    if (instruction.heldBackBy(reserves) || instruction.heldBackBy(moves)) {
      return;
    }
    SheetLine line = line(id, holes);
    if (line != null) {
      lines.computeIfAbsent(part, key -> new ArrayList<>()).add(line);
    }
  }

  /** A sentence; null when a number it needs is unknown, which is then asked for. */
  public SheetLine line(String id, Map<String, Placeholder> holes) {
    Instruction instruction = instruction(id);
    boolean whole = true;
    for (Placeholder hole : holes.values()) {
      whole &= !(hole instanceof Figure figure) || known(figure);
    }
    return whole ? new SheetLine(instruction, holes) : null;
  }

  private Instruction instruction(String id) {
    return MissingFromRulebook.instruction(advice.rulebook(), id);
  }

  /** Whether the figure is known; if not, what it needs is asked for. */
  public boolean known(Figure figure) {
    if (!figure.known()) {
      figure
          .missing()
          .forEach(field -> ask(field, field.equals(figure.field()) ? null : figure.label()));
    }
    return figure.known();
  }

  /** Asks for fields, saying for what. */
  public void ask(Collection<String> fields, String wantedFor) {
    fields.forEach(field -> ask(field, wantedFor));
  }

  /** Asks for a field; null where what it is wanted for goes without saying. */
  public void ask(String field, String wantedFor) {
    Set<String> wants = missing.computeIfAbsent(field, key -> new LinkedHashSet<>());
    if (wantedFor != null) {
      wants.add(wantedFor);
    }
  }

  public Map<SheetPart, List<SheetLine>> lines() {
    return lines;
  }

  public List<MissingMeasure> missing() {
    return missing.entrySet().stream()
        .map(one -> new MissingMeasure(one.getKey(), List.copyOf(one.getValue())))
        .toList();
  }
}
