/**
 * What to ask next, and what a typed answer says. Knows no screen and no file.
 *
 * <p>{@code Interview} puts a question, takes a line, says what became of it, and keeps the way
 * back. The foot, name, day and age come first. A map of the wall brings the outline and the cracks
 * with it; rows once begun are finished first. Every answer passes the check of files, so the file
 * is valid whenever it is saved. Whoever answers what is asked is advised as if everything known
 * had been told: {@code InterviewAgreesTest} holds that.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.interview.Interview}.
 */
package hornbook.interview;
