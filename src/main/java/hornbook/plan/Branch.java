package hornbook.plan;

import hornbook.foot.NailBranch;

/**
 * One branch of the shoe.
 *
 * @param sites where nails may go
 * @param fit the most that certainly fit
 * @param possible the most that may fit once all of the wall is mapped
 * @param behind whether the usual rearmost limit is waived
 */
record Branch(NailBranch sites, Figure fit, Figure possible, boolean behind) {}
