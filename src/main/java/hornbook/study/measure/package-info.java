/**
 * What was measured, with which tool, and how far that tool errs.
 *
 * <p>May use: {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.study.measure.Measurements}.
 */
package hornbook.study.measure;
