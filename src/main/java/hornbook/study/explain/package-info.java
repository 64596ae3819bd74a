/**
 * Why and why not: the chain from the fields of the file to what a rule says.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.measure}.
 *
 * <p>Begin with {@link hornbook.study.explain.Explainer}.
 */
package hornbook.study.explain;
