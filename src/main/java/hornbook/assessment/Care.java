package hornbook.assessment;

import hornbook.assessment.word.NailDrawn;
import hornbook.assessment.word.PresentShoe;
import java.util.List;

/**
 * What has been done to one foot so far; null is unknown.
 *
 * @param presentShoe what kind of shoe is on the foot
 * @param pad whether a pad lies under the shoe
 * @param studs whether the shoe carries studs
 * @param soreNail which nail, in the farrier's words
 * @param poulticedDays days under a poultice so far
 * @param dryForDays days since the dressing was last wet
 * @param wallGoneDays days since the wall was lost or cut
 * @param hornSince horn that has come down since, mm
 * @param vetJudged what a vet has judged on this foot
 * @param vetSawDaysAgo days since a vet looked at this foot
 */
public record Care(
    PresentShoe presentShoe,
    Boolean pad,
    Boolean studs,
    String soreNail,
    NailDrawn nailDrawn,
    Integer poulticedDays,
    Integer dryForDays,
    Integer wallGoneDays,
    Double hornSince,
    List<Judged> vetJudged,
    Integer vetSawDaysAgo) {}
