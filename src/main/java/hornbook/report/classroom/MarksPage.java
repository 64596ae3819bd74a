package hornbook.report.classroom;

import hornbook.assessment.quantity.Units;
import hornbook.report.advice.PageHead;
import hornbook.report.words.PlainWords;
import hornbook.study.critique.About;
import hornbook.study.marking.AnswerMarks;
import hornbook.study.marking.ClassAnalysis;
import hornbook.study.marking.ClassMarks;
import hornbook.study.marking.NextCases;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The marks of a class on one page: a table of learners, the points, what to teach next. */
public final class MarksPage {
  private static final int MOST_MISSED = 8;
  private static final int FEWEST = 4;

  private final ClassMarks marks;
  private final ClassAnalysis analysis;
  private final CritiqueWords words;
  private final List<NextCases.Next> teachNext;

  private MarksPage(ClassMarks marks, List<NextCases.Next> teachNext) {
    this.marks = marks;
    this.analysis = ClassAnalysis.of(marks);
    this.words = new CritiqueWords(marks.key().advice().rulebook(), Units.MM);
    this.teachNext = teachNext;
  }

  /**
   * As plain text.
   *
   * @param teachNext the cases that teach what was missed
   */
  public static String text(ClassMarks marks, String title, List<NextCases.Next> teachNext) {
    return LeafText.of(new MarksPage(marks, teachNext).leaf(title));
  }

  public static String markdown(ClassMarks marks, String title, List<NextCases.Next> teachNext) {
    return LeafMarkdown.of(new MarksPage(marks, teachNext).leaf(title));
  }

  public static String html(ClassMarks marks, String title, List<NextCases.Next> teachNext) {
    return LeafHtml.of(new MarksPage(marks, teachNext).leaf(title));
  }

  private Leaf leaf(String title) {
    Leaf leaf = new Leaf("Marks: " + title);
    leaf.paragraph(
        "Marked by the scheme \""
            + marks.scheme().name()
            + "\", out of "
            + number(marks.of())
            + ". A dangerous miss leaves "
            + number(marks.scheme().dangerous() * 100)
            + " % at most, whatever else was right.");
    learners(leaf);
    whole(leaf);
    points(leaf);
    missed(leaf);
    return leaf.paragraph(PageHead.rulebook(marks.key().advice()));
  }

  private void learners(Leaf leaf) {
    List<List<String>> rows = new ArrayList<>();
    List<Leaf.Item> unread = new ArrayList<>();
    for (ClassMarks.Row row : marks.rows()) {
      if (row.marks() == null) {
        rows.add(List.of(row.by(), "-", "cannot be read: see below"));
        unread.add(new Leaf.Item(row.by(), row.file(), row.error()));
      } else {
        rows.add(List.of(row.by(), number(row.marks().marks()), remark(row.marks())));
      }
    }
    leaf.heading("Learners").add(new Leaf.Table(List.of("Learner", "Marks", "Remark"), rows));
    if (!unread.isEmpty()) {
      leaf.under("Answers that could not be read");
      unread.forEach(leaf::add);
    }
  }

  private static String remark(AnswerMarks marks) {
    if (!marks.capped()) {
      return "";
    }
    String misses =
        marks.dangerous() == 1 ? "1 dangerous miss" : marks.dangerous() + " dangerous misses";
    return marks.before() > marks.marks()
        ? misses + ": " + number(marks.before()) + " capped to " + number(marks.marks())
        : misses;
  }

  private void whole(Leaf leaf) {
    leaf.heading("Class");
    List<String> facts = new ArrayList<>();
    facts.add(analysis.marked() + " of " + analysis.answers() + " answers marked");
    facts.add("mean " + shown(analysis.mean(), 1));
    facts.add("median " + shown(analysis.median(), 1));
    facts.add("KR-20 " + shown(analysis.kr20(), 2));
    facts.add("alpha " + shown(analysis.alpha(), 2));
    leaf.add(new Leaf.Facts(facts));
    if (marks.agreement() != null) {
      leaf.paragraph(
          "Agreement of two markers on "
              + marks.agreement().compared()
              + " points: kappa "
              + shown(marks.agreement().kappa(), 2)
              + ", 95 % interval "
              + shown(marks.agreement().low(), 2)
              + " to "
              + shown(marks.agreement().high(), 2)
              + ".");
    }
    leaf.paragraph(
        "KR-20 counts a point as won only with all its marks; alpha counts part marks. Where a number"
            + " cannot be worked out, as with one learner or no spread, it says so. With fewer than "
            + FEWEST * 5
            + " learners read all of them with care.");
  }

  private void points(Leaf leaf) {
    List<List<String>> rows = new ArrayList<>();
    for (ClassAnalysis.Item item : analysis.points()) {
      rows.add(
          List.of(
              item.id(),
              item.difficulty() == null ? "-" : Math.round(item.difficulty() * 100) + " %",
              shown(item.discrimination(), 2),
              String.join(" ", item.rules().stream().limit(FEWEST).toList())));
    }
    leaf.heading("Points");
    leaf.add(new Leaf.Table(List.of("Point", "Won", "With the rest", "Rules"), rows));
    leaf.paragraph(
        "Won: the share of the marks. With the rest: how far those who win the point win the others"
            + " (point-biserial correlation); near nothing or below, the point tells little.");
  }

  private void missed(Leaf leaf) {
    leaf.heading("Missed most");
    for (ClassAnalysis.Missed one : analysis.missed().stream().limit(MOST_MISSED).toList()) {
      String limb = one.id().substring(0, one.id().indexOf('/'));
      leaf.item(
          one.learners() + " of " + analysis.marked(),
          PlainWords.of(limb) + ": " + MissedWords.of(one, words) + rules(one) + ".",
          List.of());
    }
    if (!teachNext.isEmpty()) {
      leaf.heading("To teach next");
      teachNext.forEach(one -> leaf.item(one.exercise().name(), next(one), List.of()));
    }
  }

  private String next(NextCases.Next next) {
    List<String> rules = new ArrayList<>();
    next.rules().entrySet().stream()
        .limit(FEWEST)
        .forEach(
            one ->
                rules.add(
                    words.title(one.getKey())
                        + ", missed by "
                        + one.getValue()
                        + " of "
                        + analysis.marked()));
    String level = "level " + next.exercise().level() + ". ";
    if (rules.isEmpty()) {
      return level + "No other case rests on the same rules; it is on the same topic.";
    }
    return level + "It rests on: " + String.join("; ", rules) + ".";
  }

  private static String rules(ClassAnalysis.Missed one) {
    return one.rules().isEmpty() || one.about() == About.REASON
        ? ""
        : " (" + String.join(" ", one.rules().stream().limit(FEWEST).toList()) + ")";
  }

  private static String shown(Double value, int decimals) {
    return value == null
        ? "cannot be worked out"
        : String.format(Locale.ROOT, "%." + decimals + "f", value)
            .replaceFirst("^-(0\\.?0*)$", "$1");
  }

  static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : Double.toString(Math.rint(value * 100) / 100);
  }
}
