/**
 * The facts rules match and the conclusions they insert; the words of the rule language.
 *
 * <p>May use: {@code assessment}.
 *
 * <p>Begin with {@link hornbook.rulebook.fact.Reading}.
 */
package hornbook.rulebook.fact;
