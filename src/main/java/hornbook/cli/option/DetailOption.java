package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.report.words.Detail;

/** How much is told. */
public final class DetailOption {
  private final ArgumentValue<Boolean> brief;
  private final ArgumentValue<Boolean> full;

  public DetailOption(Arguments arguments) {
    brief = arguments.flag("--brief", "what to do and what to look at first, in 15 lines");
    full = arguments.flag("--full", "every reason, limit, observation and source");
  }

  public Detail detail() {
    if (brief.value() && full.value()) {
      throw Failure.usage("--brief and --full exclude each other", "give one of them");
    }
    if (brief.value()) {
      return Detail.BRIEF;
    }
    return full.value() ? Detail.FULL : Detail.USUAL;
  }
}
