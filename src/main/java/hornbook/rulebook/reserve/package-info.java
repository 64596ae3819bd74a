/**
 * What a call for the vet holds back until somebody has looked: data, and no judgement. It may use
 * the words of the assessment and nothing else. Begin reading at {@link
 * hornbook.rulebook.reserve.Reserves}.
 */
package hornbook.rulebook.reserve;
