package hornbook.assessment;

import static hornbook.assessment.Entry.flag;
import static hornbook.assessment.Entry.whole;
import static hornbook.assessment.Entry.word;
import static hornbook.assessment.Entry.words;

import java.util.List;

/** The signs seen and felt on one foot. */
final class SignFields {
  static final List<Field> ALL =
      List.of(
          word(
              "digitalPulse",
              DigitalPulse.class,
              "digital pulse",
              "Fingertips at the back of the pastern or the sides of the fetlock; compare feet."),
          flag("hoofHeat", "heat in the hoof", "Back of the hand on the wall; compare feet."),
          words(
              "testerPain",
              TesterSite.class,
              "pain to the testers",
              "Where it flinches again and again as the testers close."),
          word(
              "drainage",
              Drainage.class,
              "drainage",
              "Where pus or dark fluid comes out, if anywhere."),
          flag(
              "clearFluid",
              "clear fluid",
              "Clear, yellow or stringy fluid from a hole: it may come from a joint."),
          word(
              "puncture",
              Puncture.class,
              "puncture",
              "A hole made from below, once the foot is clean; do not probe it."),
          flag(
              "objectInPlace",
              "object in the foot",
              "Is a nail, splinter or wire still in? Leave it where it is."),
          word(
              "livingTissue",
              LivingTissue.class,
              "living tissue",
              "Is anything pink, red or bleeding laid bare where horn should cover it?"),
          flag(
              "coronetGroove",
              "groove at the coronet",
              "A ditch to be felt with a finger along the hairline."),
          flag("coronetTorn", "torn coronet", "Is the hairline cut or torn?"),
          flag(
              "coronetProud",
              "coronet proud",
              "Does the hairline stand out or bulge over some part of the wall?"),
          flag("crushed", "crushed", "Was the foot trodden on, run over or trapped?"),
          flag("soleBulge", "bulge in the sole", "Does the sole bulge in front of the frog?"),
          word("swelling", Swelling.class, "swelling", "How far up the limb it is filled."),
          word(
              "frogState",
              FrogState.class,
              "state of the frog",
              "Black and foul is thrush, deep in the middle cleft is deep thrush; a growth that"
                  + " bleeds when picked is the last word."),
          whole(
              "abscessesSameSpot",
              0,
              100,
              "abscesses in one spot",
              "How many there have been in that same spot, this one counted."),
          flag(
              "whiteLineBulge",
              "white line pushed in",
              "Does the white line bow inward to the frog at some place?"),
          flag(
              "ringsDiverge",
              "rings part at the heel",
              "Are the growth rings wider apart at the heel than at the toe?"),
          flag(
              "bloodAtNail",
              "blood at a nail",
              "Blood on a nail, in a nail hole, or where a nail came out."),
          word("soleShape", SoleShape.class, "shape of the sole", "Foot up, straight edge across."),
          word(
              "cartilages",
              Cartilages.class,
              "cartilages",
              "A finger's breadth above the hairline at the quarters: do they give?"),
          word(
              "stain",
              Stain.class,
              "stain",
              "Red or yellow in fresh-pared sole, or in the angle of the bar (the corn seat)."),
          flag("suddenEase", "sudden ease", "Was it very lame, and did it all at once go easier?"));

  private SignFields() {}
}
