package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.flag;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.field.FieldTable.words;

import hornbook.assessment.Signs;
import hornbook.assessment.word.Cartilages;
import hornbook.assessment.word.DigitalPulse;
import hornbook.assessment.word.Drainage;
import hornbook.assessment.word.FrogState;
import hornbook.assessment.word.LivingTissue;
import hornbook.assessment.word.Puncture;
import hornbook.assessment.word.SoleShape;
import hornbook.assessment.word.Stain;
import hornbook.assessment.word.Swelling;
import hornbook.assessment.word.TesterSite;
import java.util.List;

/** The signs seen and felt on one foot. */
final class SignFields {
  static final RecordShape SHAPE = new OfSigns();
  static final List<Field> ALL =
      List.of(
          word(
              "digitalPulse",
              DigitalPulse.values(),
              "digital pulse",
              "Fingertips at the back of the pastern or the sides of the fetlock; compare feet."),
          flag("hoofHeat", "heat in the hoof", "Back of the hand on the wall; compare feet."),
          words(
              "testerPain",
              TesterSite.values(),
              "pain to hoof testers",
              "Where hoof testers bring a pain response that you can repeat."),
          word(
              "drainage",
              Drainage.values(),
              "drainage",
              "Where pus or dark fluid comes out, if anywhere."),
          flag(
              "clearFluid",
              "clear fluid",
              "Clear, yellow or stringy fluid from a hole: it may come from a joint."),
          word(
              "puncture",
              Puncture.values(),
              "puncture or wound",
              "A hole in sole or frog once the foot is clean, or a cut at the heel bulbs or the"
                  + " pastern; do not probe it."),
          flag(
              "objectInPlace",
              "object in the foot",
              "Is a nail, splinter or wire still in? Leave it where it is."),
          word(
              "livingTissue",
              LivingTissue.values(),
              "sensitive tissue",
              "Is anything pink, red or bleeding exposed that horn should cover?"),
          flag(
              "coronetGroove",
              "groove at the coronary band",
              "A groove felt with a finger along the coronary band."),
          flag("coronetTorn", "torn coronary band", "Is the coronary band cut or torn?"),
          flag(
              "coronetProud",
              "coronary band stands out",
              "Does the coronary band stand out or bulge over some part of the wall?"),
          flag("crushed", "crushed", "Was the foot trodden on, run over or trapped?"),
          flag("soleBulge", "bulge in the sole", "Does the sole bulge in front of the frog?"),
          word("swelling", Swelling.values(), "swelling", "How far up the limb the swelling goes."),
          word(
              "frogState",
              FrogState.values(),
              "state of the frog",
              "Wasted is shrunken and out of wear; thrush is black and foul, deep when it runs down"
                  + " the middle cleft; a bleeding growth bleeds when picked."),
          whole(
              "abscessesSameSpot",
              0,
              100,
              "",
              "abscesses in one spot",
              "How many there have been in that same spot, this one counted."),
          flag(
              "whiteLineBulge",
              "white line pushed in",
              "Does the white line bow inward to the frog at some place?"),
          flag(
              "ringsDiverge",
              "rings diverge at the heel",
              "Are the growth rings wider apart at the heel than at the toe?"),
          flag(
              "bloodAtNail",
              "blood at a nail",
              "Blood on a nail, in a nail hole, or where a nail came out."),
          word(
              "soleShape",
              SoleShape.values(),
              "shape of the sole",
              "Foot up, straight edge across."),
          word(
              "cartilages",
              Cartilages.values(),
              "cartilages",
              "Press a finger's breadth above the coronary band at the quarters: do they give?"),
          word(
              "stain",
              Stain.values(),
              "stain",
              "Red or yellow in fresh-pared sole, or in the angle of the bar (the corn seat)."),
          flag("suddenEase", "sudden ease", "Was it very lame, and did it all at once go easier?"),
          whole(
              "woundHours",
              0,
              9999,
              "hours",
              "hours since the wound",
              "Since it happened, or since the horse was last seen without it."));

  private SignFields() {}

  private static final class OfSigns extends RecordShape {
    @Override
    Class<Signs> type() {
      return Signs.class;
    }

    @Override
    public Object[] take(Object record) {
      Signs r = (Signs) record;
      return new Object[] {
        r.digitalPulse(),
        r.hoofHeat(),
        r.testerPain(),
        r.drainage(),
        r.clearFluid(),
        r.puncture(),
        r.objectInPlace(),
        r.livingTissue(),
        r.coronetGroove(),
        r.coronetTorn(),
        r.coronetProud(),
        r.crushed(),
        r.soleBulge(),
        r.swelling(),
        r.frogState(),
        r.abscessesSameSpot(),
        r.whiteLineBulge(),
        r.ringsDiverge(),
        r.bloodAtNail(),
        r.soleShape(),
        r.cartilages(),
        r.stain(),
        r.suddenEase(),
        r.woundHours()
      };
    }

    @Override
    public Object build(Components c) {
      return new Signs(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
