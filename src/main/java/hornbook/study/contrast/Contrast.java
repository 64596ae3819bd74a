package hornbook.study.contrast;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A smallest set of things measured or seen otherwise that turns some of the advice.
 *
 * @param changes one to three, the nearest first
 * @param errors how far they are from what was noted, together, in measuring errors
 * @param gives all that turns
 */
public record Contrast(
    List<Change> changes, double errors, List<OutcomeChange> gives, CautionShift care) {

  /**
   * One thing measured or seen otherwise.
   *
   * @param value what it would be
   * @param from what was noted and
   * @param to what it would be, as written in a file
   * @param errors how far that is, in measuring errors
   */
  public record Change(Observation what, Object value, String from, String to, double errors) {
    /** What to write behind {@code --set}, one for each field that holds it. */
    public List<String> settings() {
      return what.paths().stream().map(path -> path + "=" + to).toList();
    }
  }

  /** What to write behind {@code --set} to have all of it. */
  public List<String> settings() {
    return changes.stream().flatMap(change -> change.settings().stream()).toList();
  }

  /** Whether another, as near or nearer, changes the same things and gives the same. */
  boolean tellsNoMoreThan(Contrast other) {
    return gives.equals(other.gives) && things().equals(other.things());
  }

  private Set<Observation> things() {
    return changes.stream().map(Change::what).collect(Collectors.toSet());
  }
}
