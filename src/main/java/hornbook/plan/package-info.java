/**
 * The job sheet: how a technique is done on one foot, in numbers. A pure function of the advice,
 * the technique and what was wished for: no clock, no files.
 *
 * <p>{@code PlanMaker} stops first if a referral is for now, then if the advice rules the technique
 * or a support out; only then it makes a {@code SheetDraft} and lets the parts write on it in the
 * order of work. A number is a {@code Figure}: measured, a limit of the trade, or computed with its
 * formula; low and high are unknown as soon as one part was not measured. A sentence is an
 * instruction of {@code rules/plan}, its holes filled by figures, places, words or days; {@code
 * draft.say} writes it, or asks for what a figure in it needs.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.effect}, {@code
 * plan.figure}, {@code plan.nailing}, {@code plan.sheet}, {@code plan.time}, {@code plan.work},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.PlanMaker}.
 */
package hornbook.plan;
