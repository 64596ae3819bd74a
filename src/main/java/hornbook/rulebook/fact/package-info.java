/**
 * The facts rules match and the conclusions they insert; the words of the rule language.
 *
 * <p>May use: nothing else of the program.
 *
 * <p>Begin with {@link hornbook.rulebook.fact.Reading}.
 */
package hornbook.rulebook.fact;
