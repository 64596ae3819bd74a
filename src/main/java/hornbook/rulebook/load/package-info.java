/**
 * The compiled rules and the compact catalogue as the program loads them at its start.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.rulebook.load.ShippedRules}.
 */
package hornbook.rulebook.load;
