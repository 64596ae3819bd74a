package hornbook.report.drawing;

import java.util.List;

/**
 * One drawing of one foot.
 *
 * @param svg the whole element, to stand in a page; empty where too little was measured
 * @param alone the same as a file of its own, with its title and key written under it
 * @param key how it is to be read
 * @param leftOut what is not drawn, and why
 */
public record Drawing(
    Picture picture, String title, String svg, String alone, String key, List<String> leftOut) {

  static Drawing none(Picture picture, String title, List<String> leftOut) {
    return new Drawing(picture, title, "", "", "", leftOut);
  }

  /** Whether there is anything to see. */
  public boolean drawn() {
    return !svg.isEmpty();
  }
}
