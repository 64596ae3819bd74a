/**
 * How steady the advice is under measuring error.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.contrast}, {@code
 * study.measure}.
 *
 * <p>Begin with {@link hornbook.study.confidence.ConfidenceAnalysis}.
 */
package hornbook.study.confidence;
