package hornbook.plan.figure;

import hornbook.assessment.Side;
import java.time.LocalDate;

/** What fills a hole in a sentence of the sheet; numbers are put into units when it is shown. */
public sealed interface Placeholder
    permits Figure, Placeholder.Place, Placeholder.Word, Placeholder.On {

  /** A run of the ground edge of one side, in mm from the middle of the toe. */
  record Place(Side side, double from, double to) implements Placeholder {}

  /** A word of the formats or a name. */
  record Word(String text) implements Placeholder {}

  /** A day. */
  record On(LocalDate day) implements Placeholder {}
}
