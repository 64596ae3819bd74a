package hornbook.report.drawing;

import hornbook.assessment.word.Word;
import hornbook.report.page.Markup;

/** The patterns areas are filled with; each tells itself from the others without its colour. */
enum Fill {
  /** Weakened wall. */
  DOTS("#7a6a1f", 5),
  /** Wall that is separated or crumbles. */
  HATCH("#b4552d", 5),
  /** Wall that is gone. */
  CROSS("#b4552d", 5),
  /** What a job adds. */
  ADDED("#2f7d6b", 4),
  /** What a job takes off. */
  TAKEN_OFF("#b4552d", 4),
  /** What a job covers. */
  COVERED("#2f7d6b", 8);

  private final String colour;
  private final int step;

  Fill(String colour, int step) {
    this.colour = colour;
    this.step = step;
  }

  String colour() {
    return colour;
  }

  String id(String drawing) {
    return drawing + "-" + Word.kebab(name());
  }

  /** The pattern, to be referred to by its id. */
  void define(Markup svg, String drawing) {
    svg.open(
        "pattern",
        "id",
        id(drawing),
        "patternUnits",
        "userSpaceOnUse",
        "width",
        step,
        "height",
        step);
    switch (this) {
      case DOTS ->
          svg.empty("circle", "cx", 1.5, "cy", 1.5, "r", 0.9, "fill", colour, "stroke", "none");
      case HATCH, ADDED -> rising(svg);
      case TAKEN_OFF -> falling(svg);
      case CROSS -> {
        rising(svg);
        falling(svg);
      }
      case COVERED -> stroke(svg, "M2,0 V8");
    }
    svg.close("pattern");
  }

  private void rising(Markup svg) {
    stroke(
        svg,
        "M-1,1 L1,-1 M0,"
            + step
            + " L"
            + step
            + ",0 M"
            + (step - 1)
            + ","
            + (step + 1)
            + " L"
            + (step + 1)
            + ","
            + (step - 1));
  }

  private void falling(Markup svg) {
    stroke(
        svg,
        "M-1,"
            + (step - 1)
            + " L1,"
            + (step + 1)
            + " M0,0 L"
            + step
            + ","
            + step
            + " M"
            + (step - 1)
            + ",-1 L"
            + (step + 1)
            + ",1");
  }

  private void stroke(Markup svg, String path) {
    svg.empty("path", "d", path, "stroke", colour, "stroke-width", "0.9", "fill", "none");
  }
}
