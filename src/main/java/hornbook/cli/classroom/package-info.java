/**
 * The commands of the classroom: exercise, critique, mark.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.dialogue}, {@code
 * cli.file}, {@code cli.option}, {@code report}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.classroom.ExerciseCommand}.
 */
package hornbook.cli.classroom;
