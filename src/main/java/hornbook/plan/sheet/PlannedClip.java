package hornbook.plan.sheet;

import hornbook.assessment.Side;

/**
 * A clip of the sheet.
 *
 * @param side null for one at the middle of the toe
 * @param at its middle, along the edge from the middle of the toe, mm
 * @param width edge it takes up, mm
 */
public record PlannedClip(Side side, double at, double width) {}
