package hornbook.assessment;

import hornbook.assessment.word.NailDrawn;

/**
 * What has been done to one foot so far, of what it needs first aid for; null is unknown.
 *
 * @param soreNail which nail, in the farrier's words
 * @param poulticedDays days under a poultice so far
 * @param dryForDays days since the dressing was last wet
 */
public record Care(
    String soreNail, NailDrawn nailDrawn, Integer poulticedDays, Integer dryForDays) {}
