/**
 * Rules put together for the engine from the catalogue, without any generated class: what a rule
 * asks becomes a few general tests, what it concludes one general consequence.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.rulebook.network.RuleNetworks}.
 */
package hornbook.rulebook.network;
