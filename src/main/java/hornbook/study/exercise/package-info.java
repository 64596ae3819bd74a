/**
 * The teaching cases and what learners answer: reading and checking of both, the model answer,
 * blank sheets.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code rulebook},
 * {@code study.explain}, {@code study.rulecase}.
 *
 * <p>Begin with {@link hornbook.study.exercise.Exercise}.
 */
package hornbook.study.exercise;
