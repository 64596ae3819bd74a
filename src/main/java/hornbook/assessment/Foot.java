package hornbook.assessment;

import hornbook.assessment.word.Deformity;
import hornbook.assessment.word.Diagnosis;
import hornbook.assessment.word.Landing;
import hornbook.assessment.word.OldShoeWear;
import hornbook.assessment.word.Onset;
import hornbook.assessment.word.PasternLine;
import hornbook.assessment.word.Shoeing;
import hornbook.assessment.word.Stance;
import java.util.List;

/**
 * One foot. Null is unknown: a null wall was not mapped, a null list of cracks was not looked for,
 * an empty one was looked for and not found.
 */
public record Foot(
    Limb limb,
    Integer lameness,
    Onset onset,
    Boolean lameSinceShod,
    Integer lameForDays,
    Shoeing shoeing,
    Boolean lostShoe,
    Integer gluedCycles,
    Integer wrappedDaysAgo,
    Stance stance,
    PasternLine pasternLine,
    Landing landing,
    OldShoeWear oldShoeWear,
    Deformity deformity,
    Boolean brushing,
    Diagnosis diagnosis,
    Measures measures,
    List<WallStretch> wall,
    List<WallCrack> cracks,
    Signs signs,
    Care care) {}
