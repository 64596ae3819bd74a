package hornbook.advice;

import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What comes first on a foot once the vet has looked and agrees. */
public final class AfterVet {
  private AfterVet() {}

  /**
   * The technique that would be first choice if nothing waited for the vet; empty where that is the
   * first choice already, and where a call for now rules all out.
   */
  public static Optional<OptionAdvice> choice(FootAdvice foot) {
    Set<String> defects =
        foot.findings().stream()
            .filter(FindingGiven::defect)
            .map(FindingGiven::id)
            .collect(Collectors.toSet());
    Verdicts verdicts = new Verdicts(null, false, defects);
    List<OptionAdvice> free = new ArrayList<>();
    for (OptionAdvice one : foot.techniques()) {
      List<ReasonGiven> others =
          one.reasons().stream().filter(reason -> reason.bearing() != Bearing.NEEDS_VET).toList();
      free.add(new OptionAdvice(one.id(), verdicts.verdict(others), others));
    }
    return verdicts.withFirstChoice(free).stream()
        .filter(one -> one.verdict() == Verdict.FIRST_CHOICE)
        .map(one -> foot.technique(one.id()))
        .filter(one -> one.verdict() == Verdict.WITH_VET)
        .findFirst();
  }
}
