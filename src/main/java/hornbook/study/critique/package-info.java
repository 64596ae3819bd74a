/**
 * A learner's answer compared with the rule base, point by point.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.exercise}.
 *
 * <p>Begin with {@link hornbook.study.critique.Critic}.
 */
package hornbook.study.critique;
