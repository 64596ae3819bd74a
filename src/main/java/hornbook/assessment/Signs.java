package hornbook.assessment;

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

/** What was seen and felt on one foot; null is unknown. */
public record Signs(
    DigitalPulse digitalPulse,
    Boolean hoofHeat,
    List<TesterSite> testerPain,
    Drainage drainage,
    Boolean clearFluid,
    Puncture puncture,
    Boolean objectInPlace,
    LivingTissue livingTissue,
    Boolean coronetGroove,
    Boolean coronetTorn,
    Boolean coronetProud,
    Boolean crushed,
    Boolean soleBulge,
    Swelling swelling,
    FrogState frogState,
    Integer abscessesSameSpot,
    Boolean whiteLineBulge,
    Boolean ringsDiverge,
    Boolean bloodAtNail,
    SoleShape soleShape,
    Cartilages cartilages,
    Stain stain,
    Boolean suddenEase,
    Integer woundHours) {}
