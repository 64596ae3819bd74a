package hornbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line of text of which parts are stressed, or lead to another place of the same book. */
record Rich(List<Piece> pieces) {
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

  Rich {
    pieces = List.copyOf(pieces);
  }

  static Rich of(String text) {
    return new Rich(List.of()).plus(text);
  }

  static Rich strong(String text) {
    return new Rich(List.of(new Piece(text, Style.STRONG, null)));
  }

  static Rich link(String text, String target) {
    return new Rich(List.of()).plusLink(text, target);
  }

  /** A sentence of the rule base whose holes are named in brackets, pointed or curly. */
  static Rich withHoles(String sentence) {
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
    return new Rich(pieces);
  }

  /** Lines one behind the other, with something between. */
  static Rich joined(String between, List<Rich> parts) {
    Rich all = new Rich(List.of());
    for (Rich part : parts) {
      all = all.pieces().isEmpty() ? part : all.plus(between).plus(part);
    }
    return all;
  }

  Rich plus(String text) {
    return text.isEmpty() ? this : plus(new Piece(text, Style.PLAIN, null));
  }

  Rich plusLink(String text, String target) {
    return plus(new Piece(text, Style.PLAIN, target));
  }

  Rich plus(Rich other) {
    List<Piece> both = new ArrayList<>(pieces);
    both.addAll(other.pieces);
    return new Rich(both);
  }

  private Rich plus(Piece piece) {
    List<Piece> more = new ArrayList<>(pieces);
    more.add(piece);
    return new Rich(more);
  }
}
