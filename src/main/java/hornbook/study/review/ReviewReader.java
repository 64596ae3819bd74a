package hornbook.study.review;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.Nearest;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.practice.LimitAmounts;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the rows of one filled questionnaire. */
final class ReviewReader {
  private static final int LONGEST = 60;
  private static final Set<String> YES = Set.of("yes", "y");
  private static final Set<String> NO = Set.of("no", "n");

  private final String file;
  private final Map<String, Limit> limits;
  private final List<Fault> faults;
  private final Set<String> told = new HashSet<>();
  private String name = "";
  private Integer years;

  ReviewReader(String file, Map<String, Limit> limits, List<Fault> faults) {
    this.file = file;
    this.limits = limits;
    this.faults = faults;
  }

  /** The answer in a row; null where it says nothing, or something wrong. */
  ReviewAnswer answer(ReviewColumns columns, List<String> row, int line) {
    person(columns, row, line);
    String agree = columns.cell(row, "agree (yes or no)").toLowerCase(Locale.ROOT);
    String value = columns.cell(row, "your value");
    String comment = columns.cell(row, "comment");
    if (agree.isEmpty() && value.isEmpty() && comment.isEmpty()) {
      return null;
    }
    int before = faults.size();
    Limit limit = limit(columns, row, line);
    if (limit == null) {
      return null;
    }
    if (name.isEmpty()) {
      refuse(columns, "your name", line, "nothing", "a name, or initials");
    } else if (!told.add(name.toLowerCase(Locale.ROOT) + "\n" + ReviewSheet.key(limit))) {
      refuse(columns, "id", line, "a second answer of " + name, "one for each limit");
    }
    Boolean agrees = YES.contains(agree) ? Boolean.TRUE : NO.contains(agree) ? false : null;
    if (agrees == null && !agree.isEmpty()) {
      refuse(columns, "agree (yes or no)", line, quoted(agree), "yes or no");
    }
    Double proposed = value.isEmpty() ? null : amount(limit, value);
    if (proposed == null && !value.isEmpty()) {
      String allowed = "an amount" + (limit.unit().isEmpty() ? "" : " in " + limit.unit());
      refuse(columns, "your value", line, quoted(value), allowed);
    }
    if (Boolean.TRUE.equals(agrees) && proposed != null && proposed != limit.value()) {
      String found = "yes, and another value";
      refuse(columns, "your value", line, found, "no and a value, or yes and none");
    }
    return faults.size() > before
        ? null
        : new ReviewAnswer(limit, agrees, proposed, comment, name, years);
  }

  private void person(ReviewColumns columns, List<String> row, int line) {
    String given = columns.cell(row, "your name");
    String since = columns.cell(row, "years in the trade");
    if (!given.isEmpty() && !given.equals(name)) {
      name = given;
      years = null;
    }
    if (since.matches("\\d{1,2}")) {
      years = Integer.valueOf(since);
    } else if (!since.isEmpty()) {
      refuse(columns, "years in the trade", line, quoted(since), "a number of years");
    }
  }

  private Limit limit(ReviewColumns columns, List<String> row, int line) {
    String id = columns.cell(row, "id");
    String limbs = columns.cell(row, "limbs");
    String age = columns.cell(row, "age");
    Limit limit = limits.get(ReviewSheet.key(id, limbs, age));
    if (limit == null) {
      List<String> ids = limits.values().stream().map(Limit::id).distinct().toList();
      String nearest = ids.contains(id) ? null : Nearest.of(id, ids);
      faults.add(
          new Fault(
              file,
              line,
              columns.column("id"),
              "id",
              "no limit " + quoted(String.join(" ", id, limbs, age).strip()),
              "an id of the questionnaire, with its limbs and age",
              nearest));
    }
    return limit;
  }

  /** A comma before decimals is a point, as spreadsheets of many countries write it. */
  private static Double amount(Limit limit, String value) {
    return LimitAmounts.of(limit, value.replaceFirst("^(-?\\d+),(\\d)", "$1.$2"));
  }

  private static String quoted(String text) {
    return '"' + (text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text) + '"';
  }

  private void refuse(
      ReviewColumns columns, String column, int line, String found, String allowed) {
    faults.add(new Fault(file, line, columns.column(column), column, found, allowed, null));
  }
}
