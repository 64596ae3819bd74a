/**
 * The job sheet: how a technique is done on one foot, in numbers.
 *
 * <p>{@link hornbook.plan.PlanMaker} is a pure function of the advice, the technique and what was
 * wished for: no clock, no files; dates count from that of the visit. Sentences and limits come
 * from the rule base, and every number carries the formula and the limits it came from. Whatever
 * needs a measure that was not taken is left out and asked for.
 */
package hornbook.plan;
