package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.Picture;
import java.util.List;
import java.util.Locale;

/** Which drawing is meant when one is asked for alone. */
public final class PictureOption {
  private final ArgumentValue<Picture> picture;
  private final Picture usual;

  /**
   * @param usual the drawing where none is named
   */
  public PictureOption(Arguments arguments, Picture usual) {
    this.usual = usual;
    picture =
        arguments.word(
            Picture.class,
            null,
            "the drawing that --format svg gives; else " + usual.name().toLowerCase(Locale.ROOT),
            "--picture");
  }

  /** Refuses a picture where none is asked for. */
  public void only(boolean asked) {
    if (picture.value() != null && !asked) {
      throw Failure.usage("--picture goes with --format svg");
    }
  }

  /**
   * The drawing as a file of its own; where there are several of a kind the last, which shows the
   * most.
   *
   * @throws Failure when too little was measured to draw it
   */
  public String of(List<Drawing> drawings) {
    Picture wanted = picture.value() == null ? usual : picture.value();
    List<Drawing> meant = drawings.stream().filter(one -> one.picture() == wanted).toList();
    Drawing last = meant.isEmpty() ? null : meant.get(meant.size() - 1);
    if (last == null || !last.drawn()) {
      throw Failure.usage(
          "there is nothing to draw: " + wanted.heading().toLowerCase(Locale.ROOT),
          last == null ? new String[0] : last.leftOut().toArray(String[]::new));
    }
    return last.alone();
  }
}
