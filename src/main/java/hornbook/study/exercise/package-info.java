/**
 * The teaching cases and what learners answer: reading and checking of both, the model answer,
 * blank sheets, cases that are drawn.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code plan}, {@code rulebook}, {@code
 * study.contrast}, {@code study.rulecase}.
 *
 * <p>Begin with {@link hornbook.study.exercise.Exercise}.
 */
package hornbook.study.exercise;
