package hornbook.report.sheet;

import hornbook.advice.CautionGiven;
import hornbook.advice.Question;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdict;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.plan.sheet.MissingMeasure;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import hornbook.report.advice.PracticePart;
import hornbook.report.advice.ReferralPart;
import hornbook.report.drawing.EdgeDrawing;
import hornbook.report.page.Section;
import hornbook.report.sheet.PlanSection.Block;
import hornbook.report.sheet.PlanSection.Drawing;
import hornbook.report.sheet.PlanSection.Lines;
import hornbook.report.sheet.PlanSection.Table;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.HeldWords;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/** The sections of a job sheet, in order of work. Every form of the sheet is made from them. */
final class PlanPage {
  static final String WALL_ONLY = "THE WALL FROM BELOW";
  static final Map<SheetPart, String> HEADINGS = new EnumMap<>(SheetPart.class);

  static {
    HEADINGS.put(SheetPart.FIRST_AID, "WHAT TO DO");
    HEADINGS.put(SheetPart.DRESS, "DRESS THE FOOT");
    HEADINGS.put(SheetPart.PREPARE, "BEFORE YOU GO ON");
    HEADINGS.put(SheetPart.NAILS, "NAILS");
    HEADINGS.put(SheetPart.SHOE, "SHOE");
    HEADINGS.put(SheetPart.BUILD, "BUILD");
    HEADINGS.put(SheetPart.EFFECT, "WHAT IT DOES TO THE FOOT");
    HEADINGS.put(SheetPart.CLOCK, "CLOCK");
    HEADINGS.put(SheetPart.GROWTH, "GROWTH AND NEXT VISIT");
    HEADINGS.put(SheetPart.OWNER, "FOR THE OWNER");
    HEADINGS.put(SheetPart.VET, "FOR THE VET");
    HEADINGS.put(SheetPart.TROT, "WALKED AND TROTTED AFTERWARDS");
  }

  private final Plan plan;
  private final PlanPhrases phrases;
  private final PlanTables tables;
  private final SheetProvenance grounds;
  private final Units units;
  private final List<PlanSection> sections = new ArrayList<>();

  private PlanPage(Plan plan, Units units) {
    this.units = units;
    this.plan = plan;
    this.phrases = new PlanPhrases(plan.advice().rulebook(), units);
    this.tables = new PlanTables(plan, phrases);
    this.grounds = new SheetProvenance(plan, phrases);
  }

  static List<PlanSection> of(Plan plan, Units units) {
    return new PlanPage(plan, units).sections();
  }

  /** The whole sheet, or one page of it. */
  static List<PlanSection> of(Plan plan, Units units, Detail detail) {
    return detail == Detail.BRIEF ? new PlanPage(plan, units).brief() : of(plan, units);
  }

  /** What has to be known first, and what is particular to this foot; provenance last. */
  private List<PlanSection> brief() {
    if (!plan.stops().isEmpty()) {
      stops();
      practice();
    } else {
      practice();
      first(line -> !BriefSheet.ROUTINE.contains(line.instruction().id()));
      BriefSheet ofFoot = new BriefSheet(plan, phrases, tables);
      ofFoot.parts().forEach(part -> add(part.heading(), part.blocks().toArray(Block[]::new)));
    }
    add("WHERE THE NUMBERS COME FROM", new Lines(grounds.inShort()));
    return sections;
  }

  /** {@code LEFT FORE: a glued shoe (first choice)}. */
  static String title(Plan plan) {
    String label = plan.advice().rulebook().technique(plan.judged().id()).label();
    String verdict = PlainWords.of(plan.judged().verdict().word());
    return FieldNames.of(plan.foot().limb()).toUpperCase(Locale.ROOT)
        + ": "
        + label
        + " ("
        + verdict
        + ")";
  }

  private List<PlanSection> sections() {
    if (!plan.stops().isEmpty()) {
      stops();
      practice();
    } else {
      practice();
      first(line -> true);
      missing();
      for (SheetPart part : SheetPart.of(Technique.of(plan.judged().id()))) {
        if (part != SheetPart.TO_HAND) {
          part(part);
        }
      }
      cautions();
      add("WHERE THE NUMBERS COME FROM", new Lines(grounds.numbers()));
      add("WHAT THEY REST ON", new Lines(grounds.limits()));
    }
    add("SOURCES", new Lines(grounds.works()));
    return sections;
  }

  private void add(String heading, Block... blocks) {
    List<Block> filled = new ArrayList<>();
    for (Block block : blocks) {
      boolean empty =
          block instanceof Lines lines && lines.lines().isEmpty()
              || block instanceof Table table && table.rows().size() <= 1
              || block instanceof Drawing drawing && drawing.lines().isEmpty();
      if (!empty) {
        filled.add(block);
      }
    }
    if (!filled.isEmpty()) {
      sections.add(new PlanSection(heading, filled));
    }
  }

  /** What a local practice changes and adds. */
  private void practice() {
    Rulebook book = plan.advice().rulebook();
    for (Section practice : PracticePart.of(book, new Phrases(book, units), List.of(plan.foot()))) {
      List<String> lines = new ArrayList<>();
      lines.add(practice.heading().replace("LOCAL PRACTICE: ", ""));
      practice.items().forEach(item -> lines.add(item.line()));
      add("LOCAL PRACTICE", new Lines(lines));
    }
  }

  private void stops() {
    List<String> why = new ArrayList<>();
    List<String> meanwhile = new ArrayList<>();
    for (ReferralGiven stop : plan.stops()) {
      why.add(phrases.says(stop.says()) + " [" + stop.rule() + "]");
      String until = phrases.says(stop.meanwhile());
      if (!meanwhile.contains(until)) {
        meanwhile.add(until);
      }
    }
    add("THE VET NOW", new Lines(why));
    add("UNTIL THE VET COMES, THIS AND NOTHING ELSE", new Lines(meanwhile));
  }

  /**
   * What has to be known before the first cut, and what to have to hand.
   *
   * @param listed which of what has to lie to hand
   */
  private void first(Predicate<SheetLine> listed) {
    List<String> lines = new ArrayList<>();
    if (plan.judged().verdict() == Verdict.WITH_VET) {
      lines.add("A VET DECIDES whether to do this, and how. Begin nothing before that.");
    }
    if (plan.wishes().despite() != null) {
      lines.add(
          "The farrier asked for this sheet against the advice: \""
              + plan.wishes().despite()
              + "\".");
    }
    if (plan.judged().verdict() == Verdict.NOT_INDICATED) {
      lines.add("Nothing recorded supports this technique on this foot.");
    }
    for (ReferralGiven referral : plan.foot().calls()) {
      lines.add(ReferralPart.heading(referral.urgency()) + ": " + phrases.says(referral.says()));
      if (referral.meanwhile() != null) {
        lines.add("Meanwhile: " + phrases.says(referral.meanwhile()));
      }
    }
    lines.addAll(HeldWords.on(plan.foot()));
    for (String support : plan.wishes().supports()) {
      plan.foot().support(support).reasons().stream()
          .filter(reason -> reason.bearing() == Bearing.NEEDS_VET)
          .forEach(
              reason ->
                  lines.add(
                      plan.advice().rulebook().support(support).label() + ". " + reason(reason)));
    }
    for (Bearing bearing :
        List.of(Bearing.RULES_OUT, Bearing.NEEDS_VET, Bearing.NEEDS, Bearing.AGAINST)) {
      plan.judged().reasons().stream()
          .filter(reason -> reason.bearing() == bearing)
          .forEach(reason -> lines.add(reason(reason)));
    }
    List<String> unseen =
        plan.foot().questions().stream()
            .filter(Question::provisional)
            .map(question -> FieldNames.of(question.field()))
            .distinct()
            .toList();
    if (!unseen.isEmpty()) {
      lines.add(
          "Look at these first; they could mean calling the vet: "
              + String.join("; ", unseen)
              + ".");
    }
    add("FIRST", new Lines(lines));
    add("TO HAND", tables.materials(), new Lines(said(SheetPart.TO_HAND, listed)));
  }

  private String reason(ReasonGiven reason) {
    String bearing =
        switch (reason.bearing()) {
          case RULES_OUT -> "Ruled out: ";
          case NEEDS_VET -> "With the vet: ";
          case NEEDS -> "Needs: ";
          case AGAINST -> "Against it: ";
          case FOR -> "For it: ";
        };
    return bearing + phrases.says(reason.says()) + " [" + reason.rule() + "]";
  }

  private List<String> said(SheetPart part, Predicate<SheetLine> listed) {
    return plan.lines(part).stream().filter(listed).map(phrases::grounded).toList();
  }

  private void part(SheetPart part) {
    List<String> lines = said(part, line -> true);
    boolean work = !Technique.of(plan.judged().id()).firstAid();
    Block before =
        switch (part) {
          case NAILS -> tables.nails();
          case EFFECT -> work ? tables.foot() : new Lines(List.of());
          case CLOCK -> tables.clock();
          default -> new Lines(List.of());
        };
    boolean drawn = work && part == SheetPart.NAILS;
    Block drawing = new Drawing(drawn ? EdgeDrawing.of(plan) : List.of());
    boolean wallOnly = part == SheetPart.NAILS && plan.nails().isEmpty();
    add(wallOnly ? WALL_ONLY : heading(plan, part), before, drawing, new Lines(lines));
  }

  /** Its heading; what supports a foot without a shoe does not stand under one of shoes. */
  static String heading(Plan plan, SheetPart part) {
    boolean bare = part == SheetPart.SHOE && !Technique.of(plan.judged().id()).shod();
    return bare ? "SUPPORT" : HEADINGS.get(part);
  }

  private void cautions() {
    List<String> lines = new ArrayList<>();
    for (CautionGiven caution : plan.cautions()) {
      lines.add(phrases.says(caution.says()) + " [" + caution.rule() + "]");
    }
    add("CAUTIONS", new Lines(lines));
  }

  private void missing() {
    List<String> lines = new ArrayList<>();
    for (MissingMeasure one : plan.missing()) {
      String how = FieldNames.how(one.field());
      String measure = how.isEmpty() ? "" : " " + how;
      lines.add(
          WishNames.of(one.field())
              + " ("
              + one.field()
              + ")."
              + measure
              + (one.wantedFor().isEmpty()
                  ? ""
                  : " For: " + String.join("; ", one.wantedFor()) + "."));
    }
    add("NOT MEASURED", new Lines(lines));
  }
}
