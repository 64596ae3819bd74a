/**
 * Trade words, numbers in the reader’s units, sentences with their holes filled, citations.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.report.words.Phrases}.
 */
package hornbook.report.words;
