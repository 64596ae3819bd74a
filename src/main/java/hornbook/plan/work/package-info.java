/**
 * The work in order: dress, prepare, build, fit.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.effect}, {@code
 * plan.figure}, {@code plan.nailing}, {@code plan.sheet}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.work.Dressing}.
 */
package hornbook.plan.work;
