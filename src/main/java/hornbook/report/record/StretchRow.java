package hornbook.report.record;

import hornbook.assessment.WallStretch;
import hornbook.report.words.Amounts;
import hornbook.report.words.PlainWords;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/** A stretch of the wall as a row: where it lies, and how it is. */
record StretchRow(WallStretch stretch, Amounts amounts) {

  List<String> cells() {
    List<String> told = new ArrayList<>();
    told.add(stretch.state() == null ? "not looked at" : state(stretch.state().word()));
    length(stretch.height(), "high", told);
    length(stretch.thickness(), "thick", told);
    length(stretch.flare(), "of flare", told);
    if (stretch.moist() != null) {
      told.add(stretch.moist() ? "stays damp or weeps" : "does not weep");
    }
    return List.of(place(), String.join(", ", told));
  }

  /** The word of the format, with its hyphen where it is spoken with one. */
  private static String state(String word) {
    return word.equals("broken-away") ? word : PlainWords.of(word);
  }

  private String place() {
    String side = stretch.side() == null ? "Wall" : PlainWords.of(stretch.side().word()) + " wall";
    String placed =
        stretch.from() == null || stretch.to() == null
            ? ""
            : ", " + amounts.span(stretch.from(), stretch.to(), "mm");
    return Sentence.capital(side) + placed;
  }

  private void length(Double mm, String what, List<String> told) {
    if (mm != null) {
      told.add(amounts.text(mm, "mm") + " " + what);
    }
  }
}
