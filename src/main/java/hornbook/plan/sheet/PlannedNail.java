package hornbook.plan.sheet;

import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.plan.figure.Figure;

/**
 * A nail of the sheet.
 *
 * @param at along the edge from the middle of the toe, mm
 * @param exit height at which it leaves the wall above the shoe, mm
 * @param stretch the sound stretch it sits in
 * @param behind whether it stands behind the usual rearmost limit, for one short interval
 */
public record PlannedNail(Side side, Figure at, Figure exit, WallStretch stretch, boolean behind) {}
