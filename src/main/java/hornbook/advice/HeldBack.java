package hornbook.advice;

import hornbook.assessment.Limb;
import hornbook.rulebook.reserve.Until;

/**
 * That a technique or support is held back by a call for the vet.
 *
 * @param until who or what gives it back
 * @param days how long, where that is a number of days; otherwise null
 * @param from the foot that calls the vet, where it is another one; otherwise null
 */
public record HeldBack(Until until, Integer days, Limb from) {}
