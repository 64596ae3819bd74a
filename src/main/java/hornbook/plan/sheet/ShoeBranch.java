package hornbook.plan.sheet;

import hornbook.foot.wall.NailBranch;
import hornbook.plan.figure.Figure;

/**
 * One branch of the shoe.
 *
 * @param sites where nails may go
 * @param fit the most that certainly fit
 * @param possible the most that may fit once all of the wall is mapped
 * @param behind whether the usual rearmost limit is waived
 */
public record ShoeBranch(NailBranch sites, Figure fit, Figure possible, boolean behind) {}
