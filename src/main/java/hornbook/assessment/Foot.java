package hornbook.assessment;

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
    Measures measures,
    List<Stretch> wall,
    List<Crack> cracks,
    Signs signs) {}
