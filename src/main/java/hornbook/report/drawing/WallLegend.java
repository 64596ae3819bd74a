package hornbook.report.drawing;

import hornbook.assessment.WallStretch;
import hornbook.foot.number.Interval;
import hornbook.foot.wall.MappedPiece;
import hornbook.report.words.Amounts;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.List;

/** The map of the wall in words, numbered as in the drawing. */
public final class WallLegend {
  private final FootMap map;
  private final Amounts amounts;

  public WallLegend(FootMap map, Amounts amounts) {
    this.map = map;
    this.amounts = amounts;
  }

  /** One line for each mapped piece of the edge, in the order of their numbers. */
  public List<String> pieces() {
    return map.pieces().stream().map(this::piece).toList();
  }

  private String piece(MappedPiece piece) {
    WallStretch stretch = piece.stretch();
    List<String> parts = new ArrayList<>();
    parts.add(PlainWords.of(stretch.state().word()));
    add(parts, stretch.height(), "high");
    add(parts, stretch.thickness(), "thick");
    if (stretch.moist() != null) {
      parts.add(stretch.moist() ? "stays damp or weeps" : "dry");
    }
    return PlainWords.of(stretch.side().word())
        + " side, "
        + amounts.span(piece.from(), piece.to(), "mm")
        + " back from the middle of the toe: "
        + String.join(", ", parts);
  }

  private void add(List<String> parts, Double length, String what) {
    if (length != null) {
      parts.add(amounts.text(length, "mm") + " " + what);
    }
  }

  /** What is not mapped, and how many nails find wall. */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (map.wall() == null) {
      remarks.add("The wall was not mapped.");
    } else if (map.wall().unmapped() > 0) {
      remarks.add(amounts.text(map.wall().unmapped(), "mm") + " of the edge was not mapped.");
    }
    if (map.outline() == null) {
      remarks.add("Not drawn: bearing length or width was not measured.");
    }
    if (map.nails() != null) {
      remarks.add(
          "Places for nails: "
              + count(map.nails().medial().count())
              + " on the inner side, "
              + count(map.nails().lateral().count())
              + " on the outer.");
    }
    return remarks;
  }

  private String count(Interval count) {
    return amounts.text(count.low(), count.high(), "", 0);
  }
}
