package hornbook.report.drawing;

import hornbook.report.page.Markup;
import java.util.List;

/** Drawings as part of a page, each with how it is read and what is left out of it. */
public final class DrawingPart {
  private DrawingPart() {}

  /** One section for drawings of a kind; none where there is neither a drawing nor a word on it. */
  public static void write(List<Drawing> drawings, Markup page) {
    if (drawings.stream().allMatch(one -> !one.drawn() && one.leftOut().isEmpty())) {
      return;
    }
    String kind = drawings.get(0).picture().name().toLowerCase(java.util.Locale.ROOT);
    page.open("section", "class", "drawing " + kind).line();
    page.element("h3", drawings.get(0).picture().heading()).line();
    for (Drawing drawing : drawings) {
      figure(drawing, page, drawings.size() > 1);
    }
    drawings.stream()
        .flatMap(one -> one.leftOut().stream())
        .distinct()
        .forEach(left -> page.element("p", left).line());
    drawings.stream()
        .map(Drawing::key)
        .filter(key -> !key.isEmpty())
        .reduce((first, last) -> last)
        .ifPresent(key -> page.element("p", key, "class", "key").line());
    page.close("section").line();
  }

  private static void figure(Drawing drawing, Markup page, boolean told) {
    if (drawing.drawn()) {
      page.open("figure").line().raw(drawing.svg()).line();
      if (told) {
        page.element("figcaption", drawing.title()).line();
      }
      page.close("figure").line();
    }
  }
}
