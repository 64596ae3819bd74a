package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.rulebook.fact.Urgency;

/** Lets a script stop where the vet is wanted. */
public final class FailOnOption {
  private final ArgumentValue<Urgency> urgency;

  public FailOnOption(Arguments arguments) {
    urgency =
        arguments.word(
            Urgency.class,
            null,
            "end with code 1 if the vet is needed this soon or sooner",
            "--fail-on");
  }

  /** What the vet is wanted for. */
  public interface Found {
    /** The most urgent referral's urgency, or null. */
    Urgency mostUrgent();
  }

  public ExitCode of(Found found) {
    Urgency asked = urgency.value();
    Urgency worst = asked == null ? null : found.mostUrgent();
    return worst != null && worst.compareTo(asked) <= 0 ? ExitCode.URGENCY_MET : ExitCode.DONE;
  }
}
