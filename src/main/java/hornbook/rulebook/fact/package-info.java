/**
 * The facts rules match and the conclusions they insert; the words of the rule language.
 *
 * <p>Facts never change once they are there, so those that rules match are marked {@link
 * org.kie.api.definition.type.ClassReactive}: else the engine works out for every test which part
 * of a fact it looks at.
 *
 * <p>May use: {@code assessment}.
 *
 * <p>Begin with {@link hornbook.rulebook.fact.Reading}.
 */
package hornbook.rulebook.fact;
