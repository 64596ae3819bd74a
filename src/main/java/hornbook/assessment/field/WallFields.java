package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.field.FieldTable.flag;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.quantity.Unit.MM;

import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.CrackDepth;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackRuns;
import hornbook.assessment.word.CrackStart;
import java.util.List;

/** The fields of a stretch of wall, and of a crack. */
final class WallFields {
  static final RecordShape STRETCH_SHAPE = new OfStretch();
  static final RecordShape CRACK_SHAPE = new OfCrack();

  static final List<Field> STRETCH =
      List.of(
          word("side", Side.values(), "side", "Medial is the inner side, lateral the outer.")
              .asFixed(),
          amount(
              "from", MM, 0, 600, 40, "from", "Where it begins, back along the edge from mid-toe."),
          amount("to", MM, 0, 600, 150, "to", "Where it ends, back along the edge from mid-toe."),
          word(
              "state",
              WallState.values(),
              "state of the wall",
              "Tap it, look at the white line under it, try it with a blunt probe."),
          amount(
              "height",
              MM,
              0,
              500,
              30,
              "height of the defect",
              "How far up from the ground the fault goes, along the wall."),
          amount(
              "thickness",
              MM,
              0,
              40,
              9,
              "wall thickness",
              "Outer face to white line, at the ground edge."),
          amount(
              "flare",
              MM,
              0,
              60,
              6,
              "flare",
              "Lay a straightedge down the wall. How far does the ground edge stand out?"),
          flag(
              "moist",
              "stays damp or weeps",
              "Does it stay damp after cleaning, or weep when pressed?"),
          flag("damp", "damp from the yard", "Wet from bedding or ground, and dry once wiped?"),
          flag(
              "mealy",
              "mealy horn",
              "Is the gap filled with grey, crumbling horn that a hoof pick brings out?"));

  static final List<Field> CRACK =
      List.of(
          word("place", CrackPlace.values(), "place", "Which part of the wall the crack is in."),
          word("side", Side.values(), "side", "Medial is the inner side, lateral the outer.")
              .asFixed(),
          word(
              "starts",
              CrackStart.values(),
              "starts at",
              "At the ground, at the coronary band, or full from one to the other."),
          word(
              "depth",
              CrackDepth.values(),
              "depth",
              "Superficial is in the horn alone, deep reaches what is under it."),
          flag("bleeds", "bleeds", "Blood in the crack, or after the horse has moved."),
          flag("moves", "moves", "Do its edges work against each other as weight comes on?"),
          flag(
              "seeps",
              "seeps",
              "Press the wall beside it: does moisture come out? Pus is recorded under drainage."),
          word("runs", CrackRuns.values(), "runs", "Upright along the horn, or across it.")
              .asFixed());

  private WallFields() {}

  private static final class OfStretch extends RecordShape {
    @Override
    Class<WallStretch> type() {
      return WallStretch.class;
    }

    @Override
    public Object[] take(Object record) {
      WallStretch r = (WallStretch) record;
      return new Object[] {
        r.side(),
        r.from(),
        r.to(),
        r.state(),
        r.height(),
        r.thickness(),
        r.flare(),
        r.moist(),
        r.damp(),
        r.mealy()
      };
    }

    @Override
    public Object build(Components c) {
      return new WallStretch(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next());
    }
  }

  private static final class OfCrack extends RecordShape {
    @Override
    Class<WallCrack> type() {
      return WallCrack.class;
    }

    @Override
    public Object[] take(Object record) {
      WallCrack r = (WallCrack) record;
      return new Object[] {
        r.place(), r.side(), r.starts(), r.depth(), r.bleeds(), r.moves(), r.seeps(), r.runs()
      };
    }

    @Override
    public Object build(Components c) {
      return new WallCrack(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
