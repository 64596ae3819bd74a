/**
 * Checks a rule base by firing it: cases that fail, and rules that contradict each other.
 *
 * <p>Opposite is: two findings of which one excludes the other; a reason for and one against or
 * ruling out that rest on the very same facts; a reason for that another rule overruled on every
 * foot it fired on. The feet are generated from a fixed seed, half with numbers about the limits,
 * half by crossing two cases. To find something new, add the check and a file in {@code
 * wrong-rules/wrong} that says what to change in the good rule base and which faults have to be
 * found; {@code WrongRulesTest} wants exactly those.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code rulebook}, {@code
 * study.generate}, {@code study.rulecase}.
 *
 * <p>Begin with {@link hornbook.study.rulecheck.FiringCheck}.
 */
package hornbook.study.rulecheck;
