package hornbook.study.exercise;

import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Member;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A row of a table as the tree an answer file would have: faults then name the row and the column.
 * An empty cell was not answered; several words in a cell have semicolons between them.
 */
final class AnswerRow {
  private static final Set<String> LISTS =
      Set.of("findings", "vetFor", "because", "supports", "cautions", "ask");

  private final String file;
  private final int line;
  private final List<String> columns;
  private final List<String> cells;

  AnswerRow(String file, int line, List<String> columns, List<String> cells) {
    this.file = file;
    this.line = line;
    this.columns = columns;
    this.cells = cells;
  }

  String cell(String column) {
    int at = columns.indexOf(column);
    return at < 0 || at >= cells.size() ? "" : cells.get(at);
  }

  private Place place(String column) {
    return new Place(file, line, Math.max(0, columns.indexOf(column)) + 1);
  }

  /** The whole answer, of these feet. */
  LocatedValue tree(List<String> limbs) {
    Map<String, Member> whole = new LinkedHashMap<>();
    put(whole, "format", scalar("by", "format", LearnerAnswer.FORMAT));
    for (String key : List.of("case", "by")) {
      if (!cell(key).isEmpty()) {
        put(whole, key, scalar(key, key, cell(key)));
      }
    }
    List<LocatedValue> feet = new ArrayList<>();
    for (String limb : limbs) {
      Group foot = foot(limb, limbs.size() == 1);
      if (foot.members().size() > 1) {
        feet.add(foot);
      }
    }
    put(whole, "feet", new Items(place("by"), "feet", feet));
    return new Group(place("by"), "", whole);
  }

  private Group foot(String limb, boolean alone) {
    Map<String, Member> foot = new LinkedHashMap<>();
    put(foot, "limb", scalar("by", "limb", limb));
    for (String key : FootAnswer.KEYS.subList(1, FootAnswer.KEYS.size())) {
      String column = limb + "." + key;
      String named = alone && columns.contains(key) ? key : column;
      if (!cell(named).isEmpty()) {
        put(foot, key, value(named, key));
      }
    }
    return new Group(place("by"), "", foot);
  }

  private LocatedValue value(String column, String key) {
    String text = cell(column);
    if (key.equals("ruledOut") && !none(text)) {
      return ruledOut(column, text);
    }
    boolean list = LISTS.contains(key) || key.equals("ruledOut");
    return list ? list(column, text, ";") : scalar(column, column, text);
  }

  private static boolean none(String text) {
    return text.equals(Vocabulary.NONE) || text.equals("[]") || text.equals("{}");
  }

  private Items list(String column, String text, String between) {
    List<LocatedValue> items = new ArrayList<>();
    for (String word : none(text) ? new String[0] : text.split(between)) {
      if (!word.isBlank()) {
        items.add(scalar(column, column, word.strip()));
      }
    }
    return new Items(place(column), column, items);
  }

  /** {@code nail-on: N003 N005; heel-wedge}. */
  private Group ruledOut(String column, String text) {
    Map<String, Member> ruledOut = new LinkedHashMap<>();
    for (String part : text.split(";")) {
      if (!part.isBlank()) {
        int colon = part.indexOf(':');
        String id = (colon < 0 ? part : part.substring(0, colon)).strip();
        String rules = colon < 0 ? "" : part.substring(colon + 1).strip();
        put(ruledOut, id, list(column, rules, "\\s+"));
      }
    }
    return new Group(place(column), column, ruledOut);
  }

  private void put(Map<String, Member> to, String key, LocatedValue value) {
    to.put(key, new Member(value.place(), value));
  }

  private Scalar scalar(String column, String path, String text) {
    return new Scalar(place(column), path, text, Token.TEXT);
  }
}
