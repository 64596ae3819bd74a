/**
 * The smallest changes to what was measured or seen that change the advice.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.measure}.
 *
 * <p>Begin with {@link hornbook.study.contrast.Contrasts}.
 */
package hornbook.study.contrast;
