package hornbook.report.study;

import hornbook.advice.fact.Truth;
import hornbook.report.words.Citations;
import hornbook.report.words.LimitText;
import hornbook.report.words.Phrases;
import hornbook.report.words.RecordedText;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.study.explain.ChainLink;

/** One link of a chain in plain words: what was observed, and how it compares. */
public final class ChainLinkText {
  private final Rulebook book;
  private final Phrases phrases;
  private final RuleWords words;
  private final LimitText limits;
  private final RecordedText noted;

  public ChainLinkText(Rulebook book, Phrases phrases) {
    this.book = book;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
    this.limits = new LimitText(phrases, new Citations(book));
    this.noted = new RecordedText(phrases.amounts());
  }

  /** The fields of the file it rests on; empty where it rests on what other rules found. */
  String observed(ChainLink link, boolean all) {
    return noted.line(link.noted(), all);
  }

  /** Whether the comparison names the fields itself. */
  static boolean inOne(ChainLink link) {
    return !(link.condition() instanceof Condition.OfReading);
  }

  /** What was observed against what the rule asks for, in one sentence. */
  public String comparison(ChainLink link, RuleEntry rule, boolean all) {
    if (link.condition() instanceof Condition.OfReading reading) {
      return reading(link, reading, rule);
    }
    if (link.condition() instanceof Condition.OfLimit) {
      return limitNotHolding(link);
    }
    if (link.condition() instanceof Condition.OfFinding finding) {
      return finding(link, finding);
    }
    String asked = asked(link.condition());
    String seen = noted.line(link.noted(), all);
    return link.truth() == Truth.TRUE ? seen + ": " + asked : seen + "; asked for: " + asked;
  }

  private String finding(ChainLink link, Condition.OfFinding finding) {
    String label = book.findings().get(finding.what()).label();
    return switch (link.truth()) {
      case TRUE -> "found: " + label;
      case FALSE -> "not found: " + label;
      case UNKNOWN -> "not known whether there is: " + label;
    };
  }

  private static String asked(Condition condition) {
    if (condition instanceof Condition.OfSeen seen) {
      return RuleWords.words(seen.word());
    }
    if (condition instanceof Condition.OfCrack crack) {
      return RuleWords.of(crack);
    }
    return RuleWords.of((Condition.OfStretch) condition);
  }

  private String reading(ChainLink link, Condition.OfReading condition, RuleEntry rule) {
    String label = Subjects.label(condition.what());
    Limit limit = link.state().limit();
    Reading reading = read(link);
    if (limit == null) {
      String id = rule.limitBoundTo(condition.limit());
      String missing = ": such a foot has no limit for it (" + id + ")";
      return (reading == null ? label : named(label, phrases.of(reading))) + missing;
    }
    String side = words.side(limit, condition.satisfies());
    if (reading == null) {
      boolean noted = link.noted().stream().allMatch(field -> field.value() != null);
      String unknown = noted ? " cannot be worked out from these" : " not known";
      return label + unknown + "; asked for: " + side;
    }
    String value = named(label, phrases.apart(reading, limit));
    return switch (link.truth()) {
      case TRUE -> value + ": " + side + by(link, limit);
      case FALSE -> value + "; asked for: " + side + off(link, limit);
      case UNKNOWN -> value + "; asked for: " + side + ", and it may lie either side";
    };
  }

  /** The label with its value: {@code lameness grade 2} says the grade once. */
  private static String named(String label, String value) {
    String last = label.substring(label.lastIndexOf(' ') + 1) + " ";
    return value.startsWith(last)
        ? label + value.substring(last.length() - 1)
        : label + " " + value;
  }

  private String by(ChainLink link, Limit limit) {
    return link.off() == null || link.off() == 0
        ? ", just on it"
        : ", by " + phrases.amounts().gap(link.off(), limit.unit());
  }

  private String off(ChainLink link, Limit limit) {
    return link.off() == null || link.off() == 0
        ? "; it lies just on the limit"
        : "; off by " + phrases.amounts().gap(link.off(), limit.unit());
  }

  private static Reading read(ChainLink link) {
    return link.state().cited().isEmpty() ? null : (Reading) link.state().cited().get(0);
  }

  private String limitNotHolding(ChainLink link) {
    return noted.line(link.noted(), true)
        + ": the limit for "
        + link.asked().label()
        + " holds for other feet"
        + RuleWords.where(link.asked());
  }

  /** The limit with its ground; empty where the link is compared with none. */
  public String limit(ChainLink link, boolean disputes) {
    Limit limit = link.asked();
    if (limit == null) {
      return "";
    }
    return "limit " + limit.id() + ": " + (disputes ? limits.line(limit) : limits.alone(limit));
  }
}
