package hornbook.study.contrast;

import hornbook.advice.FootAdvice;
import hornbook.assessment.field.Field;
import hornbook.rulebook.fact.Limit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The contrasts of one foot.
 *
 * @param foot the advice on what was noted
 * @param goal what the contrasts bring about
 * @param contrasts the nearest first, as many as were asked for at the most
 * @param more whether there are others, further off
 * @param reach how far off sets of three may be, together, to have been tried: infinite where all
 *     were that could be nearer than those told
 * @param looked all that was measured or seen and bears on the foot
 * @param fixed the fields that are left alone, what is in the van apart
 * @param grade the limit that says how far a grade or count may be off
 * @param word the limit that says how many errors a sign seen otherwise counts as
 */
public record FootContrasts(
    FootAdvice foot,
    ContrastGoal goal,
    List<Contrast> contrasts,
    boolean more,
    double reach,
    List<Observation> looked,
    List<Field> fixed,
    Limit grade,
    Limit word) {
  /** The errors that what was looked at was reckoned with, each once. */
  public Set<Limit> errors() {
    Set<Limit> errors = new LinkedHashSet<>();
    looked.stream()
        .filter(one -> one.tool() != null)
        .forEach(measured -> errors.add(measured.error()));
    errors.add(grade);
    errors.add(word);
    return errors;
  }
}
