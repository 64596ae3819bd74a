package hornbook.report.words;

import hornbook.advice.Statement;
import hornbook.assessment.quantity.Units;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Turns sentences with holes and the facts that fill them into plain words, in given units. One
 * reason bears on many techniques, so what was said once is kept: for use by one thread.
 */
public final class Phrases {
  private static final int FINEST = 4;

  private final Rulebook book;
  private final Amounts amounts;
  private final Map<Statement, String> said = new IdentityHashMap<>();
  private final Map<Statement, String> saidWithGrounds = new IdentityHashMap<>();

  public Phrases(Rulebook book, Units units) {
    this.book = book;
    this.amounts = new Amounts(units);
  }

  public Amounts amounts() {
    return amounts;
  }

  /** The sentence with its holes filled. */
  public String says(Statement says) {
    return said.computeIfAbsent(says, one -> filled(one, false));
  }

  /**
   * The sentence with its holes filled; what does not rest on a published work says so, each limit
   * on the spot and the sentence as a whole at its end.
   *
   * @param basis the weakest ground the sentence rests on
   */
  public String grounded(Statement says, Basis basis) {
    String text = limitsGrounded(says);
    String tag = tag(basis);
    return tag.isEmpty() || Sentence.grounded(text, basis) ? text : text + " " + tag;
  }

  /** The sentence with its holes filled, and beside each limit its ground if not published. */
  public String limitsGrounded(Statement says) {
    return saidWithGrounds.computeIfAbsent(says, one -> filled(one, true));
  }

  /** {@code (practice)}, or nothing for what is published. */
  public static String tag(Basis basis) {
    return basis == Basis.PUBLISHED ? "" : "(" + basis.word() + ")";
  }

  /** A text of the rule base without holes, its amounts in the units of the reader. */
  public String plain(String text) {
    return new LiteralUnits(amounts).in(text);
  }

  /** One fact in plain words: a number with its unit, a word, a name, a short description. */
  public String of(CitedFact fact) {
    return of(fact, 0);
  }

  /** A limit's value with its unit, and its ground where that is not a published work. */
  public String groundedLimit(Limit limit) {
    return (of(limit) + " " + tag(limit.basis())).strip();
  }

  private String of(CitedFact fact, int finer) {
    if (fact instanceof Reading reading) {
      return amounts.text(reading.low(), reading.high(), Subjects.unit(reading.what()), finer);
    }
    if (fact instanceof Limit limit) {
      return amounts.text(limit.value(), limit.unit(), Math.max(finer, exact(limit)));
    }
    if (fact instanceof Crack crack) {
      return PlainWords.of(crack);
    }
    if (fact instanceof Stretch stretch) {
      return PlainWords.of(stretch, amounts);
    }
    if (fact instanceof Finding finding) {
      return book.findings().get(finding.what()).label();
    }
    return PlainWords.of(((Seen) fact).word());
  }

  /** Decimals beyond the usual that a limit needs to be shown as it stands in the rule base. */
  private int exact(Limit limit) {
    if (limit.value() == Math.rint(limit.value())) {
      return 0;
    }
    boolean converted = !amounts.amount(limit.value(), limit.unit()).unit().equals(limit.unit());
    int scale = BigDecimal.valueOf(limit.value()).stripTrailingZeros().scale();
    return converted ? 0 : Math.max(0, scale - Numbers.decimals(limit.unit()));
  }

  private String filled(Statement says, boolean grounds) {
    Template template = Template.of(says.template(), amounts);
    if (template.whole() != null) {
      return template.whole();
    }
    int finer = telling(says);
    Sentence sentence = new Sentence();
    for (int hole = 0; hole < template.holes().size(); hole++) {
      sentence.literal(template.literals().get(hole));
      CitedFact fact = says.holes().get(template.holes().get(hole));
      sentence.fact(of(fact, finer), fact instanceof Finding);
      if (grounds && fact instanceof Limit limit) {
        sentence.ground(limit.basis());
      }
    }
    sentence.literal(template.literals().get(template.holes().size()));
    return sentence.text();
  }

  /** A reading with as many decimals as tell it from a limit. */
  public String apart(Reading reading, Limit limit) {
    int finer = 0;
    while (finer < FINEST && blurred(reading, limit, finer)) {
      finer++;
    }
    return of(reading, finer);
  }

  /** How many more decimals tell a reading from the limit it was compared with. */
  private int telling(Statement says) {
    int finer = 0;
    while (finer < FINEST && blurred(says, finer)) {
      finer++;
    }
    return finer;
  }

  private boolean blurred(Statement says, int finer) {
    for (CitedFact one : says.holes().values()) {
      for (CitedFact other : says.holes().values()) {
        if (one instanceof Reading reading
            && other instanceof Limit limit
            && blurred(reading, limit, finer)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean blurred(Reading reading, Limit limit, int finer) {
    return reading.exact()
        && reading.low() != limit.value()
        && of(reading, finer).equals(of(limit, finer));
  }
}
