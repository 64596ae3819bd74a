/**
 * The daybook as everybody sees it: entries, what they say of a choice, and the history of a foot.
 * Everything here works on what was written down at the time, never on the rules of today.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.record.Entry}.
 */
package hornbook.record;
