/**
 * The job sheet: how a technique is done on one foot, in numbers. A pure function of the advice,
 * the technique and what was wished for: no clock, no files.
 *
 * <p>Sentences and limits come from the rule base, and every number carries the formula and the
 * limits it came from. What needs a measure that was not taken is left out and asked for.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.effect}, {@code
 * plan.figure}, {@code plan.nailing}, {@code plan.sheet}, {@code plan.time}, {@code plan.work},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.PlanMaker}.
 */
package hornbook.plan;
