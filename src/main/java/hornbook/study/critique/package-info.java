/**
 * A learner's answer compared with the rule base, point by point.
 *
 * <p>The model answer takes what a case expects, and from the rule base what the case leaves open.
 * There is one class for each part of an answer; each adds points with a verdict and the evidence
 * behind it. {@code Choice} decides what is dangerous: what a call for the vet holds back, whatever
 * the reason; what is ruled out, unless the learner says why; what needs the vet, where no vet is
 * called. A new part of an answer is a component of {@code FootAnswer}, a line in {@code
 * AnswerReader}, a part here, and a {@code MarkedPoint} if it is to win marks.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.exercise}.
 *
 * <p>Begin with {@link hornbook.study.critique.Critic}.
 */
package hornbook.study.critique;
