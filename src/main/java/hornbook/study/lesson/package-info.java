/**
 * A case worked through in a dialogue: looking, answering, hints. Knows no screen and no file. May
 * use {@code study.exercise} and {@code study.critique}. Begin reading at {@code Lesson}.
 */
package hornbook.study.lesson;
