/**
 * Where nails and clips go.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.figure}, {@code
 * plan.sheet}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.nailing.Nailing}.
 */
package hornbook.plan.nailing;
