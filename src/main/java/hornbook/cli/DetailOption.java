package hornbook.cli;

import hornbook.report.Detail;

/** How much is told. */
final class DetailOption {
  private final Value<Boolean> brief;
  private final Value<Boolean> full;

  DetailOption(Arguments arguments) {
    brief = arguments.flag("--brief", "what to do and what to look at first, in 15 lines");
    full = arguments.flag("--full", "every reason, limit, observation and source");
  }

  Detail detail() {
    if (brief.value() && full.value()) {
      throw Failure.usage("--brief and --full exclude each other", "give one of them");
    }
    if (brief.value()) {
      return Detail.BRIEF;
    }
    return full.value() ? Detail.FULL : Detail.USUAL;
  }
}
