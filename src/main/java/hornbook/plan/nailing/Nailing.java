package hornbook.plan.nailing;

import static hornbook.plan.sheet.SheetPart.NAILS;

import hornbook.advice.Verdict;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.foot.FootReadings;
import hornbook.foot.number.Interval;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.NailBranch;
import hornbook.foot.wall.NailSites;
import hornbook.foot.wall.SideSurvey;
import hornbook.foot.wall.WallGroup;
import hornbook.foot.wall.WallSurvey;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.figure.Placeholders;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.ShoeBranch;
import hornbook.plan.sheet.Technique;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the nails go. They go into sound wall alone, whatever is built round it; where the rule
 * base lets a branch without enough wall be nailed behind the usual limit, the sheet says so.
 */
public final class Nailing {
  private final SheetDraft draft;
  private final FootReadings readings;
  private final NailNumbers numbers;
  private final List<PlannedNail> nails = new ArrayList<>();
  private final List<Figure> forWrap = new ArrayList<>();
  private List<PlannedClip> clips = List.of();

  public Nailing(SheetDraft draft) {
    this.draft = draft;
    this.readings = draft.readings();
    this.numbers = new NailNumbers(draft);
  }

  public List<PlannedNail> nails() {
    return List.copyOf(nails);
  }

  /** What to have to hand: nails for the horn, and those a wrap may take besides. */
  public List<Figure> materials() {
    List<Figure> materials = new ArrayList<>();
    if (!nails.isEmpty()) {
      materials.add(Figure.measured("nails", nails.size(), "", null));
    }
    if (!forWrap.isEmpty()) {
      double more = forWrap.stream().mapToDouble(Figure::value).sum();
      materials.add(Figure.measured("more nails, if the wrap takes them", more, "", null));
    }
    return materials;
  }

  /** Whether any nail is driven, into horn or into a wrap. */
  public boolean driven() {
    return !nails.isEmpty() || !forWrap.isEmpty();
  }

  public List<PlannedClip> clips() {
    return clips;
  }

  /** Whether some nail stands behind the usual limit. */
  public boolean behind() {
    return nails.stream().anyMatch(PlannedNail::behind);
  }

  public void write() {
    if (!draft.technique().shod()) {
      draft.say(NAILS, "nails.bare");
      return;
    }
    if (draft.technique() == Technique.GLUE_ON) {
      draft.say(NAILS, "nails.glued");
      return;
    }
    if (draft.technique() == Technique.PROSTHETIC_WALL) {
      draft.say(NAILS, "nails.repair");
    }
    if (readings.nails() == null) {
      draft.ask(unmapped(), "the places of the nails");
      return;
    }
    placed();
  }

  private List<String> unmapped() {
    List<String> fields = new ArrayList<>(draft.given().bearingLength().missing());
    fields.addAll(draft.given().width().missing());
    if (readings.wall() == null) {
      fields.add(draft.given().path("wall"));
    }
    return fields;
  }

  private void placed() {
    if (readings.outline().widestAssumed()) {
      draft.ask(
          draft.given().path("measures.toeToWidest"),
          "the rearmost nail, estimated from where such feet are widest");
    }
    ShoeBranch inner = branch(Side.MEDIAL);
    ShoeBranch outer = branch(Side.LATERAL);
    if (clipped()) {
      clips = new Clips(draft).places(inner.sites(), outer.sites(), numbers.wanted(Side.MEDIAL));
    }
    Figure exit = numbers.exit();
    branch(inner, exit);
    branch(outer, exit);
    if (draft.technique() == Technique.CAST_WRAP) {
      draft.say(NAILS, "nails.wrap", "least", draft.limit("wrap.thickness-least"));
    }
    if (!nails.isEmpty()) {
      exits(exit);
      draft.say(NAILS, "nails.holes");
      draft.say(NAILS, "nails.size");
      draft.say(NAILS, "nails.wrong", "depth", draft.limit("nails.wrong-depth"));
      draft.say(NAILS, "nails.prick");
    }
    if (behind()) {
      draft.say(NAILS, "nails.behind", "days", draft.limit("waived.interval"));
    }
    clipLines();
  }

  /** A foot so low that a third of its toe lies under the lowest clench has one height alone. */
  private void exits(Figure exit) {
    Figure least = draft.limit("nails.exit.least");
    Figure most = numbers.highest();
    draft.say(
        NAILS,
        most.value() > least.value() ? "nails.exit" : "nails.exit-low",
        Placeholders.of("exit", exit).and("least", least).and("most", most));
  }

  /** Where they are wished for, or the advice holds them open without a vet. */
  private boolean clipped() {
    Verdict verdict = draft.foot().support("clips").verdict();
    return draft.wished("clips") || verdict == Verdict.WORKABLE || verdict == Verdict.FIRST_CHOICE;
  }

  private void clipLines() {
    if (clipped()) {
      draft.say(
          NAILS,
          clips.isEmpty() ? "nails.no-clip" : "nails.clips",
          Placeholders.of("nails", draft.limit("clip.nails")).and("width", Clips.width(draft)));
    }
  }

  private ShoeBranch branch(Side side) {
    NailBranch usual = of(readings.nails(), side);
    double least = draft.limit("nails.branch.least").value();
    boolean behind =
        draft.technique() == Technique.NAIL_ON_ADAPTED
            && usual.count().high() < least
            && of(readings.nailsIfBehind(), side).count().low() >= least;
    NailBranch sites = behind ? of(readings.nailsIfBehind(), side) : usual;
    Interval count = sites.count();
    return new ShoeBranch(
        sites, numbers.fit(count.low(), behind), numbers.fit(count.high(), behind), behind);
  }

  private static NailBranch of(NailSites sites, Side side) {
    return side == Side.MEDIAL ? sites.medial() : sites.lateral();
  }

  private void branch(ShoeBranch branch, Figure exit) {
    Side side = branch.sites().side();
    Placeholder inner = new Placeholder.Word(side.word());
    Figure usual = numbers.usual(branch);
    NailBranch left = Clips.clear(branch.sites(), side, clips);
    List<Double> places =
        NailRow.places(left, numbers.wanted(branch), draft.limit("nails.spacing-most").value());
    for (double at : places) {
      nails.add(nail(side, at, exit, branch.behind()));
    }
    Figure set =
        Figure.reckoned(
            "nails set in the branch",
            places.size(),
            "",
            "as many of {fit} as are usual, {usual}, clear of any clip",
            FormulaParts.of("fit", branch.fit()).and("usual", usual));
    draft.say(
        NAILS,
        "nails.count",
        Placeholders.of("side", inner)
            .and("fit", branch.fit())
            .and("least", draft.limit("nails.branch.least"))
            .and("usual", usual)
            .and("set", set));
    if (draft.technique() == Technique.CAST_WRAP && places.size() < numbers.wanted(branch)) {
      intoWrap(inner, usual, set);
    } else if (places.size() < draft.limit("nails.branch.least").value()) {
      draft.say(NAILS, clipOn(side) ? "nails.few-clip" : "nails.few", "side", inner);
    }
    if (branch.possible().value() > branch.fit().value()) {
      uncertain(branch, inner);
    }
  }

  /** What the horn cannot take, a wrap thick enough may. */
  private void intoWrap(Placeholder side, Figure usual, Figure set) {
    Figure left =
        Figure.reckoned(
            "nails for the wrap alone",
            usual.value() - set.value(),
            "",
            "usual {usual} - in horn {set}",
            FormulaParts.of("usual", usual).and("set", set));
    forWrap.add(left);
    draft.say(
        NAILS,
        "nails.into-wrap",
        Placeholders.of("side", side)
            .and("most", left)
            .and("apart", draft.limit("nails.spacing"))
            .and("rear", numbers.rearmost(false)));
  }

  private boolean clipOn(Side side) {
    return clips.stream().anyMatch(clip -> clip.side() == null || clip.side() == side);
  }

  private void uncertain(ShoeBranch branch, Placeholder side) {
    draft.say(
        NAILS, "nails.maybe", Placeholders.of("side", side).and("possible", branch.possible()));
    SideSurvey survey = survey(readings.wall(), branch.sites().side());
    for (MappedPiece piece : survey.pieces()) {
      boolean thin = piece.group() == WallGroup.SOUND;
      if (thin && piece.stretch().thickness() == null) {
        draft.known(draft.given().thickness(piece.stretch()));
      }
    }
    if (!(survey.unmapped() == 0)) {
      draft.ask(draft.given().path("wall"), "the stretch of wall that is not on the map");
    }
  }

  private static SideSurvey survey(WallSurvey wall, Side side) {
    return side == Side.MEDIAL ? wall.medial() : wall.lateral();
  }

  /** Where two stretches meet at a nail, it is told by the one that is known to take it. */
  private boolean takesNails(MappedPiece piece) {
    Double thickness = piece.stretch().thickness();
    return piece.group() == WallGroup.SOUND
        && thickness != null
        && thickness >= readings.limits().nailing().leastThickness();
  }

  private PlannedNail nail(Side side, double at, Figure exit, boolean waived) {
    WallStretch stretch = null;
    for (MappedPiece piece : survey(readings.wall(), side).pieces()) {
      boolean in = piece.from() <= at && at <= piece.to();
      if (in && takesNails(piece)) {
        stretch = piece.stretch();
      }
    }
    boolean behind = waived && at > readings.rearmostNail();
    Figure place =
        Figure.reckoned(
            "nail on the " + (side == Side.MEDIAL ? "inner" : "outer") + " side, from mid-toe",
            at,
            "mm",
            "in sound wall, {least} to {most} behind the nail before it where the wall lets it",
            FormulaParts.of("least", draft.limit("nails.spacing"))
                .and("most", draft.limit("nails.spacing-most")));
    return new PlannedNail(side, place, exit, stretch, behind);
  }
}
