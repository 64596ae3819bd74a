/**
 * The daybook as everybody sees it: entries, what they say of a choice, and the history of a foot.
 *
 * <p>Everything here works on what was written down at the time, never on the rules of today. It
 * may use the rooms from {@code assessment} to {@code plan}. Begin with {@link
 * hornbook.record.Entry}.
 */
package hornbook.record;
