package hornbook.cli.option;

import hornbook.advice.Advice;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.rulebook.fact.Urgency;
import java.util.List;

/** Lets a script stop where the vet is wanted. */
public final class FailOnOption {
  private final ArgumentValue<Urgency> urgency;

  public FailOnOption(Arguments arguments) {
    urgency =
        arguments.word(
            Urgency.class,
            null,
            "end with code 1 when the vet is wanted this soon or sooner",
            "--fail-on");
  }

  public ExitCode of(List<Advice> advice) {
    Urgency asked = urgency.value();
    boolean met =
        asked != null
            && advice.stream()
                .flatMap(one -> one.urgency().stream())
                .anyMatch(found -> found.compareTo(asked) <= 0);
    return met ? ExitCode.URGENCY_MET : ExitCode.DONE;
  }
}
