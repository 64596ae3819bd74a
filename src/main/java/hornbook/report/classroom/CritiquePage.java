package hornbook.report.classroom;

import hornbook.assessment.quantity.Units;
import hornbook.report.advice.PageHead;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Sentence;
import hornbook.study.critique.Critique;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.Point;
import hornbook.study.critique.PointVerdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** A critique for people: danger first, then what was right, then what was missed. */
public final class CritiquePage {
  private final Critique critique;
  private final String title;
  private final CritiqueTutor tutor;

  private CritiquePage(Critique critique, String title, CritiqueTutor tutor) {
    this.critique = critique;
    this.title = title;
    this.tutor = tutor;
  }

  /**
   * As plain text.
   *
   * @param title of the case, or null for a foot of one's own
   */
  public static String text(Critique critique, String title, Units units, FirstChoiceIf firstIf) {
    return LeafText.of(page(critique, title, units, firstIf).leaf());
  }

  public static String markdown(
      Critique critique, String title, Units units, FirstChoiceIf firstIf) {
    return LeafMarkdown.of(page(critique, title, units, firstIf).leaf());
  }

  public static String html(Critique critique, String title, Units units, FirstChoiceIf firstIf) {
    return LeafHtml.of(page(critique, title, units, firstIf).leaf());
  }

  /** Finds what would make a technique the first choice. */
  public interface FirstChoiceIf extends CritiqueTutor.FirstIf {}

  private static CritiquePage page(
      Critique critique, String title, Units units, FirstChoiceIf firstIf) {
    CritiqueTutor tutor = new CritiqueTutor(critique.key().advice().rulebook(), units, firstIf);
    return new CritiquePage(critique, title, tutor);
  }

  private Leaf leaf() {
    String about = title == null ? PageHead.title(critique.key().advice()) : title;
    String by = critique.answer().by();
    Leaf leaf = new Leaf("Critique: " + about + (by == null ? "" : ", answered by " + by));
    long dangerous = critique.dangerous();
    if (dangerous > 0) {
      leaf.paragraph(
          dangerous
              + (dangerous == 1 ? " point is" : " points are")
              + " dangerous: read that first.");
    }
    for (FootCritique foot : critique.feet()) {
      foot(foot, leaf);
    }
    return leaf.paragraph(PageHead.SAFETY).paragraph(PageHead.rulebook(critique.key().advice()));
  }

  private void foot(FootCritique foot, Leaf leaf) {
    leaf.heading(Sentence.capital(FieldNames.of(foot.limb())));
    part(foot, "Dangerous", "danger", PointVerdict::dangerous, leaf);
    part(foot, "Right, or can be defended", "right", PointVerdict::stands, leaf);
    part(foot, "Does not hold on this foot", "missed", one -> one == PointVerdict.UNFOUNDED, leaf);
    part(foot, "Missed", "missed", one -> one == PointVerdict.MISSED, leaf);
    unanswered(foot, leaf);
  }

  private void part(
      FootCritique foot, String heading, String kind, Predicate<PointVerdict> which, Leaf leaf) {
    List<Point> points = foot.points().stream().filter(one -> which.test(one.verdict())).toList();
    if (!points.isEmpty()) {
      leaf.add(new Leaf.Heading(3, heading, kind));
      Set<String> asked = new HashSet<>();
      points.forEach(point -> leaf.add(item(tutor.item(foot, point), asked)));
    }
  }

  /** A question is put once, however many points it is about. */
  private static Leaf.Item item(CritiqueItem item, Set<String> asked) {
    List<String> notes = new ArrayList<>();
    if (item.point().verdict() == PointVerdict.AGREED) {
      notes.addAll(item.rules());
      return new Leaf.Item(item.lead(), "", notes);
    }
    if (!item.bears().isEmpty()) {
      notes.add("On this foot: " + item.bears() + ".");
    }
    String asks = item.bears().isEmpty() ? item.asks() : referring(item);
    if (!asks.isEmpty() && asked.add(asks)) {
      notes.add("Ask yourself: " + asks);
    }
    if (!item.says().isEmpty()) {
      notes.add(item.says());
    }
    notes.addAll(item.rules());
    return new Leaf.Item(item.lead(), "", notes);
  }

  /** The question without what stands on the line above it. */
  private static String referring(CritiqueItem item) {
    return item.asks().replace('"' + item.bears() + '"', "that");
  }

  /** What was left blank is named and not told: it is the learner's to try again. */
  private void unanswered(FootCritique foot, Leaf leaf) {
    String name = critique.key().name();
    List<String> left =
        foot.points().stream()
            .filter(one -> one.verdict() == PointVerdict.UNANSWERED)
            .map(one -> one.about().word().replace('-', ' '))
            .distinct()
            .toList();
    if (!left.isEmpty()) {
      leaf.add(new Leaf.Heading(3, "Not answered", "missed"));
      leaf.paragraph(
          Sentence.capital(String.join(", ", left))
              + "."
              + (name == null ? "" : " Hints: hornbook exercise run " + name));
    }
  }
}
