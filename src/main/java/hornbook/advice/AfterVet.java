package hornbook.advice;

import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What comes first on a foot once the vet has looked and agrees. */
public final class AfterVet {
  private AfterVet() {}

  /**
   * The technique that would be first choice if nothing waited for the vet; empty where that is the
   * first choice already, and where a call for now rules all out.
   *
   * @param firstAid whether a technique is first aid: that is done before
   */
  public static Optional<OptionAdvice> choice(FootAdvice foot, Predicate<String> firstAid) {
    if (foot.techniques().stream().noneMatch(one -> one.verdict() == Verdict.WITH_VET)) {
      return Optional.empty();
    }
    Set<String> defects =
        foot.findings().stream()
            .filter(FindingGiven::defect)
            .map(FindingGiven::id)
            .collect(Collectors.toSet());
    Verdicts verdicts = new Verdicts(null, false, defects, firstAid);
    List<OptionAdvice> free = new ArrayList<>();
    for (OptionAdvice one : foot.techniques()) {
      List<ReasonGiven> others =
          one.reasons().stream().filter(reason -> reason.bearing() != Bearing.NEEDS_VET).toList();
      if (!firstAid.test(one.id())) {
        free.add(new OptionAdvice(one.id(), verdicts.verdict(one.id(), others), others));
      }
    }
    return verdicts.withFirstChoice(free).stream()
        .filter(one -> one.verdict() == Verdict.FIRST_CHOICE)
        .map(one -> foot.technique(one.id()))
        .filter(one -> one.verdict() == Verdict.WITH_VET)
        .findFirst();
  }
}
