package hornbook.report.sheet;

import hornbook.advice.CautionGiven;
import hornbook.plan.Plan;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Numbers;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A job sheet on one page: the steps that name a number or a place of this foot, all that has to be
 * true before anything is covered, and the cautions by name. Routine stays on the whole sheet.
 */
final class BriefSheet {
  /** What has to be true before anything is covered: no sheet leaves it out. */
  private static final Set<String> GATE = Set.of("prepare.ready", "prepare.stop");

  /** What lies to hand on every job. */
  static final Set<String> ROUTINE = Set.of("hand.trim");

  private final Plan plan;
  private final PlanPhrases phrases;
  private final PlanTables tables;
  private int leftOut;

  BriefSheet(Plan plan, PlanPhrases phrases, PlanTables tables) {
    this.plan = plan;
    this.phrases = phrases;
    this.tables = tables;
  }

  List<PlanSection> parts() {
    List<PlanSection> parts = new ArrayList<>();
    Set<String> missing = new LinkedHashSet<>();
    plan.missing().forEach(one -> missing.add(WishNames.of(one.field())));
    parts.add(section("NOT MEASURED", joined(missing)));
    for (SheetPart part : SheetPart.of(Technique.of(plan.judged().id()))) {
      parts.add(new PlanSection(PlanPage.heading(plan, part), part(part)));
    }
    Set<String> cautions = new LinkedHashSet<>();
    for (CautionGiven one : plan.cautions()) {
      String title = plan.advice().rulebook().rules().get(one.rule()).title();
      cautions.add(title + " [" + one.rule() + "]");
    }
    parts.add(section("CAUTIONS", joined(cautions)));
    String steps = Numbers.counted(leftOut, "step") + " that every such job takes";
    parts.add(
        section(
            "LEFT OUT HERE",
            List.of(
                (leftOut == 0 ? "" : steps + "; ")
                    + "the cautions in full; the lines for owner and vet; how to watch the horse"
                    + " move. The whole sheet: leave --brief out.")));
    return parts;
  }

  private List<Block> part(SheetPart part) {
    List<String> own = new ArrayList<>();
    for (SheetLine line : plan.lines(part)) {
      boolean kept =
          switch (part) {
            case PREPARE -> !line.holes().isEmpty() || GATE.contains(line.instruction().id());
            case OWNER, VET, TROT -> false;
            case GROWTH -> own.isEmpty();
            case CLOCK -> !line.figures().isEmpty();
            default -> !line.holes().isEmpty();
          };
      if (kept) {
        own.add(phrases.grounded(line));
      } else if (part.compareTo(SheetPart.OWNER) < 0) {
        leftOut++;
      }
    }
    Block table =
        switch (part) {
          case NAILS -> tables.nails();
          case EFFECT -> changed(tables.foot());
          case CLOCK -> tables.setting();
          default -> new Lines(List.of());
        };
    return part == SheetPart.EFFECT ? List.of(table) : List.of(table, new Lines(own));
  }

  /** The rows that end otherwise than they begin. */
  private static Table changed(Table foot) {
    List<List<String>> rows = new ArrayList<>(foot.rows().subList(0, 1));
    foot.rows().stream()
        .skip(1)
        .filter(row -> !row.get(1).equals(row.get(row.size() - 1)))
        .forEach(rows::add);
    return new Table(rows);
  }

  private static PlanSection section(String heading, List<String> lines) {
    return new PlanSection(heading, List.of(new Lines(lines)));
  }

  private static List<String> joined(Set<String> names) {
    return names.isEmpty() ? List.of() : List.of(Sentence.capital(String.join("; ", names)) + ".");
  }
}
