package hornbook.report.words;

import hornbook.rulebook.Condition;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Says in plain words what a rule asks for and what it concludes. */
public final class RuleWords {
  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)\\}");

  private final Rulebook book;
  private final Phrases phrases;
  private final CrossReferences uses;

  public RuleWords(Rulebook book, Phrases phrases) {
    this.book = book;
    this.phrases = phrases;
    this.uses = new CrossReferences(book);
  }

  /** The conditions of a rule, one line each; limits stand in the lines that are held to them. */
  public List<String> conditions(RuleEntry rule) {
    List<String> lines = new ArrayList<>();
    for (Condition condition : rule.conditions()) {
      if (!(condition instanceof Condition.OfLimit)) {
        lines.add(condition(rule, condition));
      }
    }
    return lines;
  }

  private String condition(RuleEntry rule, Condition condition) {
    if (condition instanceof Condition.OfReading reading) {
      String limit = rule.limitBoundTo(reading.limit());
      return Subjects.label(reading.what()) + ": " + bound(limit, reading.satisfies());
    }
    if (condition instanceof Condition.OfSeen seen) {
      return Subjects.label(seen.what()) + ": " + words(seen.word());
    }
    if (condition instanceof Condition.OfCrack crack) {
      return of(crack);
    }
    if (condition instanceof Condition.OfStretch stretch) {
      return of(stretch);
    }
    return "found: " + book.findings().get(((Condition.OfFinding) condition).what()).label();
  }

  /** {@code at least 2}; for a limit that differs by limb or age each of its values. */
  private String bound(String id, boolean satisfies) {
    return each(uses.limits(id), limit -> side(limit, satisfies), "; ");
  }

  /** What is told of limits that share an id, once where it is the same of several. */
  private static String each(List<Limit> limits, Function<Limit, String> told, String between) {
    Map<String, List<Limit>> same = new LinkedHashMap<>();
    limits.forEach(
        limit -> same.computeIfAbsent(told.apply(limit), key -> new ArrayList<>()).add(limit));
    List<String> each = new ArrayList<>();
    same.forEach((words, those) -> each.add(words + where(those)));
    return String.join(between, each);
  }

  /** Where any of these limits holds: what they do not share is left out. */
  private static String where(List<Limit> limits) {
    Limit first = limits.get(0);
    boolean limbs = limits.stream().allMatch(limit -> limit.limbs() == first.limbs());
    boolean age = limits.stream().allMatch(limit -> limit.age() == first.age());
    return where(limbs ? first.limbs() : null, age ? first.age() : null);
  }

  public String side(Limit limit, boolean satisfies) {
    boolean above = (limit.direction() == Limit.Direction.AT_LEAST) == satisfies;
    boolean itself = limit.inclusive() == satisfies;
    String value = phrases.of(limit);
    if (above) {
      return (itself ? "at least " : "more than ") + value;
    }
    return (itself ? "at most " : "less than ") + value;
  }

  /** {@code (fore)}, where a limit does not hold for every foot. */
  public static String where(Limit limit) {
    return where(limit.limbs(), limit.age());
  }

  private static String where(Limit.Limbs limbs, Limit.Age age) {
    List<String> only = new ArrayList<>();
    if (limbs != null) {
      only.add(limbs == Limit.Limbs.FORE ? "fore" : "hind");
    }
    if (age != null) {
      only.add(age == Limit.Age.ADULT ? "adult" : "foal");
    }
    return only.isEmpty() ? "" : " (" + String.join(", ", only) + ")";
  }

  /** {@code a crack at the quarter or heel, that bleeds}. */
  public static String of(Condition.OfCrack crack) {
    return "a crack" + all(" ", crack.words());
  }

  /** {@code a stretch of wall that is separated or crumbling, damp}. */
  public static String of(Condition.OfStretch stretch) {
    return "a stretch of wall" + all(" that is ", stretch.words());
  }

  private static String all(String before, Map<String, WordTest> tests) {
    return tests.isEmpty()
        ? ""
        : tests.entrySet().stream()
            .map(test -> told(test.getKey(), words(test.getValue())))
            .collect(Collectors.joining(", ", before, ""));
  }

  private static String told(String field, String words) {
    boolean yes = words.equals("yes");
    return switch (field) {
      case "place" -> "at the " + words;
      case "side" -> "on the " + words + " side";
      case "starts" ->
          words.equals("full")
              ? "of full length"
              : "from the " + words.replace("full", "of full length");
      case "bleeds" -> yes ? "that bleeds" : "that does not bleed";
      case "moves" -> yes ? "that moves" : "that does not move";
      case "moist" -> yes ? "that stays damp or weeps" : "that does not weep";
      case "mealy" -> yes ? "filled with mealy horn" : "without mealy horn";
      case "seeps" -> yes ? "that seeps" : "that does not seep";
      case "runs" -> words.equals("across") ? "that runs across the horn" : "that runs upright";
      case "damp" -> yes ? "damp from the yard" : "not wet";
      case "depth" -> "that is " + words;
      default -> words;
    };
  }

  public static String words(WordTest test) {
    String words = test.words().stream().map(PlainWords::of).collect(Collectors.joining(" or "));
    return test.oneOf() ? words : "anything but " + words;
  }

  /** What the rule concludes, in one line. */
  public String outcome(RuleEntry rule) {
    RuleConclusion outcome = rule.outcome();
    if (outcome instanceof RuleConclusion.Finds finds) {
      boolean defect = book.findings().get(finds.finding()).defect();
      String label = book.findings().get(finds.finding()).label();
      return "finds: " + label + (defect ? ", a defect the technique has to answer" : "");
    }
    if (outcome instanceof RuleConclusion.Refers refers) {
      return "calls the vet " + soon(refers.urgency()) + ": " + PlainWords.of(refers.id());
    }
    if (outcome instanceof RuleConclusion.Reasons reasons) {
      return bearing(reasons.bearing()) + " " + labels(reasons.subjects());
    }
    return "warns: " + PlainWords.of(((RuleConclusion.Cautions) outcome).id());
  }

  public static String soon(Urgency urgency) {
    return switch (urgency) {
      case NOW -> "now";
      case TODAY -> "today";
      case DAYS -> "within days";
      case MENTION -> "at the next chance (worth a mention)";
    };
  }

  private static String bearing(Bearing bearing) {
    return switch (bearing) {
      case FOR -> "supports";
      case AGAINST -> "is against";
      case NEEDS -> "has to be put right first, for";
      case NEEDS_VET -> "the vet has to come first, for";
      case RULES_OUT -> "rules out";
    };
  }

  /** The heading over rules that bear this way. */
  public static String heading(Bearing bearing) {
    return switch (bearing) {
      case FOR -> "For it";
      case AGAINST -> "Against it";
      case NEEDS -> "To be put right first";
      case NEEDS_VET -> "The vet comes first";
      case RULES_OUT -> "Ruled out by";
    };
  }

  /** Techniques and supports in words of the trade. */
  public String labels(List<String> subjects) {
    return subjects.stream().map(this::label).collect(Collectors.joining(", "));
  }

  private String label(String subject) {
    NamedOption technique = book.technique(subject);
    return technique == null ? book.support(subject).label() : technique.label();
  }

  /** The sentence of a rule, its limits filled in and what is observed named in angle brackets. */
  public String says(RuleEntry rule, String template) {
    Matcher hole = HOLE.matcher(template);
    StringBuilder text = new StringBuilder();
    while (hole.find()) {
      hole.appendReplacement(text, Matcher.quoteReplacement(filled(rule, hole.group(1))));
    }
    hole.appendTail(text);
    return phrases.plain(text.toString());
  }

  private String filled(RuleEntry rule, String variable) {
    for (Condition condition : rule.conditions()) {
      if (condition.variable().equals(variable)) {
        return filled(condition);
      }
    }
    return "<" + variable + ">";
  }

  private String filled(Condition condition) {
    if (condition instanceof Condition.OfLimit limit) {
      List<Limit> limits = uses.limits(limit.id());
      return limits.stream().map(phrases::of).distinct().count() == 1
          ? phrases.of(limits.get(0))
          : each(limits, phrases::of, " or ");
    }
    if (condition instanceof Condition.OfReading reading) {
      return "<" + Subjects.label(reading.what()) + ">";
    }
    if (condition instanceof Condition.OfSeen seen) {
      return "<" + Subjects.label(seen.what()) + ">";
    }
    if (condition instanceof Condition.OfFinding finding) {
      return book.findings().get(finding.what()).label();
    }
    return condition instanceof Condition.OfCrack ? "<crack>" : "<stretch of wall>";
  }
}
