package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.quantity.Unit.DEGREE;
import static hornbook.assessment.quantity.Unit.MM;

import hornbook.assessment.Measures;
import java.util.List;

/** The measures of one foot. */
final class MeasureFields {
  static final RecordShape SHAPE = new OfMeasures();
  static final List<Field> ALL =
      List.of(
          amount(
              "toeLength",
              MM,
              15,
              500,
              90,
              "toe length",
              "Middle of the toe, coronary band to ground, along the wall."),
          amount(
              "heelLength",
              MM,
              1,
              250,
              35,
              "heel length",
              "Heel wall, coronary band to ground, along the wall."),
          amount(
              "toeAngle",
              DEGREE,
              5,
              120,
              50,
              "toe angle",
              "Front wall to the ground, gauge at mid-toe."),
          amount(
              "heelAngle",
              DEGREE,
              1,
              120,
              47,
              "heel angle",
              "Heel wall to the ground, from the side."),
          amount(
              "pasternAngle",
              DEGREE,
              5,
              120,
              50,
              "pastern angle",
              "Front of the pastern to the ground, the cannon upright and weight on the foot."),
          amount(
              "bearingLength",
              MM,
              15,
              450,
              130,
              "bearing length",
              "Toe to heel buttress, straight along the ground."),
          amount(
              "width", MM, 15, 350, 124, "width", "Straight across the foot at its widest part."),
          amount(
              "toeToWidest",
              MM,
              1,
              350,
              62,
              "toe to widest part",
              "Toe straight back to the line across the widest part."),
          amount(
              "toeToFrog",
              MM,
              1,
              300,
              46,
              "toe to point of frog",
              "Toe straight back to the point of the frog, trimmed to where it joins the sole."),
          amount(
              "frogLength", MM, 5, 350, 82, "frog length", "Point of the frog to its back edge."),
          amount(
              "frogWidth", MM, 1, 250, 55, "frog width", "Across the frog at its widest, behind."),
          amount(
              "medialHeelHeight",
              MM,
              0,
              250,
              41,
              "inner heel height",
              "Inner heel bulb, coronary band straight down to the ground."),
          amount(
              "lateralHeelHeight",
              MM,
              0,
              250,
              42,
              "outer heel height",
              "Outer heel bulb, coronary band straight down to the ground."),
          amount(
              "coronetGirth",
              MM,
              50,
              800,
              350,
              "girth of the coronary band",
              "Tape once round the coronary band."),
          amount(
              "nailExitHeight",
              MM,
              1,
              100,
              20,
              "height of the nail exits",
              "Ground to the line of clenches, along the wall."),
          amount(
              "soleDepth",
              MM,
              0,
              60,
              15,
              "sole depth",
              "Only from a vet's radiographs; thumb pressure is no measure."),
          amount(
              "palmarAngle",
              DEGREE,
              -40,
              60,
              4,
              "palmar angle",
              "Underside of the coffin bone to the ground, only from a vet's radiographs; below 0 when"
                  + " the bone tips back."),
          amount(
              "toTrim",
              MM,
              0,
              60,
              6,
              "wall to come off at this trim",
              "How much wall an ordinary trim takes off today, ground edge to the line of the"
                  + " trim; 0 when the foot is trimmed already."));

  private MeasureFields() {}

  private static final class OfMeasures extends RecordShape {
    @Override
    Class<Measures> type() {
      return Measures.class;
    }

    @Override
    public Object[] take(Object record) {
      Measures r = (Measures) record;
      return new Object[] {
        r.toeLength(),
        r.heelLength(),
        r.toeAngle(),
        r.heelAngle(),
        r.pasternAngle(),
        r.bearingLength(),
        r.width(),
        r.toeToWidest(),
        r.toeToFrog(),
        r.frogLength(),
        r.frogWidth(),
        r.medialHeelHeight(),
        r.lateralHeelHeight(),
        r.coronetGirth(),
        r.nailExitHeight(),
        r.soleDepth(),
        r.palmarAngle(),
        r.toTrim()
      };
    }

    @Override
    public Object build(Components c) {
      return new Measures(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
