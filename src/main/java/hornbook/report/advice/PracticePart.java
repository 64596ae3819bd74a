package hornbook.report.advice;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.MovedLimits;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.PageContext;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.LimitChange;
import hornbook.rulebook.Practice;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a local practice changes on a page, and adds to it. A limit moved toward less safety stands
 * on every page; any other where it touches a foot.
 */
public final class PracticePart {
  private final Rulebook book;
  private final Practice practice;
  private final Phrases phrases;
  private final List<FootAdvice> feet;
  private final Set<Limit> used;
  private final boolean all;

  private PracticePart(
      Rulebook book, Phrases phrases, List<FootAdvice> feet, Set<Limit> used, boolean all) {
    this.book = book;
    this.practice = book.practice();
    this.phrases = phrases;
    this.feet = feet;
    this.used = used;
    this.all = all;
  }

  /** Whether the part stands below the feet: nothing stands above a call for the vet. */
  static boolean below(Advice advice) {
    return advice.urgency().isPresent();
  }

  /** The part, or none where no local practice was given. */
  public static List<Section> of(PageContext told) {
    return of(told.book(), told.phrases(), told.advice().feet());
  }

  /** The part on a page about these feet. */
  public static List<Section> of(Rulebook book, Phrases phrases, List<FootAdvice> feet) {
    return of(book, phrases, feet, Set.of());
  }

  /** The part on a page about these feet that was reckoned with these limits beside the rules'. */
  public static List<Section> of(
      Rulebook book, Phrases phrases, List<FootAdvice> feet, Set<Limit> used) {
    return book.practice() == null
        ? List.of()
        : List.of(new PracticePart(book, phrases, feet, used, false).section());
  }

  /** All that a practice changes and adds, whatever foot it is about. */
  public static Section whole(Rulebook book, Phrases phrases) {
    return new PracticePart(book, phrases, List.of(), Set.of(), true).section();
  }

  private Section section() {
    List<Item> items = new ArrayList<>();
    boolean refers = all || feet.stream().anyMatch(foot -> !foot.referrals().isEmpty());
    if (refers && !practice.emergency().isEmpty()) {
      items.add(Item.of("Call", numbers()));
    }
    for (LimitChange change : practice.changes()) {
      if (all || change.lessSafe() || touches(book, change, feet, used)) {
        items.add(changed(change));
      }
    }
    for (Practice.Note note : practice.notes()) {
      if (all || feet.stream().anyMatch(foot -> concerns(note, foot))) {
        items.add(Item.of(named(note), note.says()));
      }
    }
    if (practice.law() != null) {
      items.add(Item.of("Law", practice.law()));
    }
    if (items.isEmpty()) {
      items.add(Item.of("it touches nothing here."));
    }
    String from = " (" + practice.by() + ", " + PageHead.spoken(practice.date()) + ")";
    return new Section(Kind.PRACTICE, "LOCAL PRACTICE: " + practice.name() + from, items);
  }

  /** Whether a moved limit is among those used, or touches the advice on some of the feet. */
  static boolean touches(
      Rulebook book, LimitChange change, List<FootAdvice> feet, Set<Limit> used) {
    return used.contains(change.after())
        || feet.stream().anyMatch(foot -> MovedLimits.touching(book, foot).contains(change));
  }

  private Item changed(LimitChange change) {
    Limit after = change.after();
    String what =
        after.label()
            + RuleWords.where(after)
            + " ("
            + after.id()
            + ") "
            + phrases.of(after)
            + " in place of "
            + phrases.of(change.before())
            + ": "
            + change.reason();
    return Item.of(change.lessSafe() ? "LESS SAFE" : "Moved", what);
  }

  private String numbers() {
    return practice.emergency().stream()
        .map(one -> one.name() + " " + one.number())
        .collect(Collectors.joining("; ", "", "."));
  }

  private String named(Practice.Note note) {
    return switch (note.about()) {
      case TOPIC -> topic(note.id());
      case RULE -> book.rules().get(note.id()).title() + " (" + note.id() + ")";
      case TECHNIQUE ->
          book.technique(note.id()) == null
              ? book.support(note.id()).label()
              : book.technique(note.id()).label();
    };
  }

  private String topic(String id) {
    return book.topics().stream()
        .filter(topic -> topic.id().equals(id))
        .map(Topic::title)
        .findFirst()
        .orElse(id);
  }

  /** A rule that fired, a topic of which one did, or a technique that is not closed. */
  private boolean concerns(Practice.Note note, FootAdvice foot) {
    Stream<RuleEntry> fired =
        foot.firings().stream().map(firing -> book.rules().get(firing.rule()));
    return switch (note.about()) {
      case TOPIC -> fired.anyMatch(rule -> rule.topic().equals(note.id()));
      case RULE -> fired.anyMatch(rule -> rule.id().equals(note.id()));
      case TECHNIQUE -> open(foot.technique(note.id())) || open(foot.support(note.id()));
    };
  }

  private static boolean open(OptionAdvice judged) {
    return judged != null
        && judged.verdict() != Verdict.RULED_OUT
        && judged.verdict() != Verdict.NOT_INDICATED;
  }
}
