package hornbook.record;

import hornbook.assessment.Limb;
import java.util.ArrayList;
import java.util.List;

/**
 * One foot over its visits.
 *
 * @param visits in the order of their days
 * @param steps from each to the next, one fewer than visits
 */
public record FootHistory(Limb limb, List<FootVisit> visits, List<VisitStep> steps) {

  static FootHistory of(Limb limb, List<FootVisit> visits) {
    List<VisitStep> steps = new ArrayList<>();
    for (int i = 1; i < visits.size(); i++) {
      steps.add(VisitStep.of(visits.get(i - 1), visits.get(i)));
    }
    return new FootHistory(limb, List.copyOf(visits), List.copyOf(steps));
  }
}
