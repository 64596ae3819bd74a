package hornbook.cli;

import hornbook.advice.Advice;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import picocli.CommandLine.Option;

/** Lets a script stop where the vet is wanted. */
final class FailOnOption {
  @Option(
      names = "--fail-on",
      paramLabel = "now|today|days|mention",
      converter = All.class,
      completionCandidates = All.class,
      description = "end with code 1 when the vet is wanted this soon or sooner")
  private Urgency urgency;

  ExitCode of(List<Advice> advice) {
    boolean met =
        urgency != null
            && advice.stream()
                .flatMap(one -> one.urgency().stream())
                .anyMatch(found -> found.compareTo(urgency) <= 0);
    return met ? ExitCode.URGENCY_MET : ExitCode.DONE;
  }

  /** The words of {@code --fail-on}. */
  static final class All extends Words<Urgency> {
    All() {
      super(Urgency.class);
    }
  }
}
