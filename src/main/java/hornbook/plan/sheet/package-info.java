/**
 * What a job sheet is made of, and the draft that the parts write on.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan.figure}, {@code
 * rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.sheet.SheetDraft}.
 */
package hornbook.plan.sheet;
