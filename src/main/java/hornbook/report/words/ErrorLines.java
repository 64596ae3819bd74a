package hornbook.report.words;

import hornbook.rulebook.fact.Limit;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;

/** Measuring errors as they are told below what was reckoned with them. */
public final class ErrorLines {
  private ErrorLines() {}

  /**
   * One line each: what is measured, how far it may be off, and how good the ground for that is.
   */
  public static List<String> of(Collection<Limit> errors, Phrases phrases) {
    return new LinkedHashSet<>(errors).stream().map(error -> line(error, phrases)).toList();
  }

  private static String line(Limit error, Phrases phrases) {
    String gap = phrases.amounts().gap(error.value(), error.unit());
    return error.label() + ": ± " + gap + " (" + error.basis().word() + ")";
  }
}
