/**
 * A learner's answer compared with the rule base, point by point. May use {@code study.exercise}
 * and all that {@code study} may. Begin reading at {@code Critic}.
 */
package hornbook.study.critique;
