/**
 * A case worked through in a dialogue: looking, answering, hints. Knows no screen and no file.
 *
 * <p>A lesson puts a step, takes a line, and says what became of it.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.critique}, {@code
 * study.exercise}.
 *
 * <p>Begin with {@link hornbook.study.lesson.Lesson}.
 */
package hornbook.study.lesson;
