/**
 * How steady the advice is under measuring error.
 *
 * <p>{@code MeasurementSimulation} draws each number about the one noted from a normal
 * distribution, part of whose variance all measures by one tool share; the errors, that part and
 * how many standard deviations a stated error holds are limits ({@code error.*}). A run is known by
 * its seed and number, and batches are added in their order: threads change nothing. {@code
 * OutcomeCache} fires the rules once for all draws that answer every condition alike. For some of
 * the runs that turned, {@code Attribution} puts one measure after the other back to what was
 * noted: the share of turns that go back ranks what to measure again. {@code ConfidenceTest} holds
 * all this to the normal distribution of another library.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.contrast}, {@code
 * study.measure}.
 *
 * <p>Begin with {@link hornbook.study.confidence.ConfidenceAnalysis}.
 */
package hornbook.study.confidence;
