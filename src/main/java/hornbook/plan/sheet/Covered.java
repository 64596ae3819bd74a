package hornbook.plan.sheet;

import hornbook.assessment.Side;

/**
 * A run of wall that a job covers, from the ground up.
 *
 * @param from along the edge from the middle of the toe, mm
 * @param height above the ground, mm; infinite where it goes as high as the clearance below the
 *     coronary band allows
 */
public record Covered(Side side, double from, double to, double height) {}
