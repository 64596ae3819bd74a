package hornbook.report.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line of text of which parts are stressed, or lead to another place of the same book. */
record RichText(List<Piece> pieces) {
  private static final Pattern HOLE = Pattern.compile("<([^<>]*)>|\\{([^{}]*)\\}");

  /** How a piece stands out. */
  enum Style {
    PLAIN,
    STRONG,
    /** What is filled in when a foot is seen. */
    HOLE
  }

  /**
   * Some words of one kind.
   *
   * @param target the anchor they lead to, or null
   */
  record Piece(String text, Style style, String target) {}

  RichText {
    pieces = List.copyOf(pieces);
  }

  static RichText of(String text) {
    return new RichText(List.of()).plus(text);
  }

  static RichText strong(String text) {
    return new RichText(List.of(new Piece(text, Style.STRONG, null)));
  }

  static RichText link(String text, String target) {
    return new RichText(List.of()).plusLink(text, target);
  }

  /** A sentence of the rule base whose holes are named in brackets, pointed or curly. */
  static RichText withHoles(String sentence) {
    List<Piece> pieces = new ArrayList<>();
    Matcher hole = HOLE.matcher(sentence);
    int from = 0;
    while (hole.find()) {
      pieces.add(new Piece(sentence.substring(from, hole.start()), Style.PLAIN, null));
      String name = hole.group(1) == null ? hole.group(2) : hole.group(1);
      pieces.add(new Piece(name, Style.HOLE, null));
      from = hole.end();
    }
    pieces.add(new Piece(sentence.substring(from), Style.PLAIN, null));
    pieces.removeIf(piece -> piece.text().isEmpty());
    return new RichText(pieces);
  }

  /** Lines one behind the other, with something between. */
  static RichText joined(String between, List<RichText> parts) {
    RichText all = new RichText(List.of());
    for (RichText part : parts) {
      all = all.pieces().isEmpty() ? part : all.plus(between).plus(part);
    }
    return all;
  }

  RichText plus(String text) {
    return text.isEmpty() ? this : plus(new Piece(text, Style.PLAIN, null));
  }

  RichText plusLink(String text, String target) {
    return plus(new Piece(text, Style.PLAIN, target));
  }

  RichText plus(RichText other) {
    List<Piece> both = new ArrayList<>(pieces);
    both.addAll(other.pieces);
    return new RichText(both);
  }

  private RichText plus(Piece piece) {
    List<Piece> more = new ArrayList<>(pieces);
    more.add(piece);
    return new RichText(more);
  }
}
