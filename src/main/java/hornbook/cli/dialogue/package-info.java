/**
 * The interview at a terminal or through a pipe.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.file}, {@code
 * interview}, {@code report}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.cli.dialogue.InterviewTask}.
 */
package hornbook.cli.dialogue;
