package hornbook.assessment;

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
    Boolean suddenEase) {}
