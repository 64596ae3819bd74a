/**
 * What a call for the vet holds back until somebody has looked: data, and no judgement.
 *
 * <p>May use: {@code assessment}.
 *
 * <p>Begin with {@link hornbook.rulebook.reserve.Reserves}.
 */
package hornbook.rulebook.reserve;
