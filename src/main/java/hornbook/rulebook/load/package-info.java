/**
 * The compact catalogue of a rule base, as the program writes it and loads it at its start.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.rulebook.load.ShippedRules}.
 */
package hornbook.rulebook.load;
