/**
 * Setting times, growth, the next visit, and what owner and vet are told.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.effect}, {@code
 * plan.figure}, {@code plan.nailing}, {@code plan.sheet}, {@code plan.work}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.time.Clock}.
 */
package hornbook.plan.time;
