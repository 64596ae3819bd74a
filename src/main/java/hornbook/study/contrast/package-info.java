/**
 * The smallest changes to what was measured or seen that change the advice.
 *
 * <p>{@code Observations} lists what was measured or seen and bears on a foot; a field marked fixed
 * is left alone, and so is the van. {@code SingleChanges} goes from what was noted to the
 * graduation of the tool, either way, and to the other words of a sign, and keeps one change for
 * each other set of conditions met. {@code RuleTable} tells what a foot that meets these conditions
 * is advised, without the engine, and {@code RuleTableTest} holds it to the engine. {@code
 * CombinedChanges} gives a set of two or three only where no smaller one leads to the same result
 * as near. {@code Contrasts} runs each set once more through the engine from its own lines for
 * {@code --set}. {@code CautionShift} says which way it goes: where a referral or a bar falls away
 * it is less cautious, whatever else comes with it.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.measure}.
 *
 * <p>Begin with {@link hornbook.study.contrast.Contrasts}.
 */
package hornbook.study.contrast;
