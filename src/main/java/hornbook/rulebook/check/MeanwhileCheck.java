package hornbook.rulebook.check;

import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.reserve.Reserves;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether what the text of a call for the vet forbids is held back as data: a sentence alone stops
 * no verdict and no job sheet. Told from the words of its clauses.
 */
final class MeanwhileCheck {
  private static final Pattern CLAUSE = Pattern.compile("[^.:;,()]+");
  private static final Pattern FORBIDS =
      words("no|not|nothing|never|nor|none|before any|before anything|without");

  /** What cannot be meant by a word that is forbidden: no better off the shoe forbids no shoe. */
  private static final Pattern NOT_MEANT = words("better|drugs|proof|reason|cause|fault|hole");

  /** A kind of deed, and whether anything of that kind is held back. */
  private enum Deed {
    CUT(
        "techniques, supports or cuts",
        "cut|cutting|pare|paring|trim|trimming|dig|digging|knife|lower|lowered|rasp|rasped",
        held -> !held.cuts().isEmpty()),
    FIX(
        "techniques or supports",
        "cover|close|bond|wrap|rebuild|patch|fill|filler|glue|nail|nailing|nailed|shoe|shoeing"
            + "|reshoe|wedge|pressure|fit|fix",
        held -> !held.subjects().isEmpty()),
    MOVE("moves", "trot|trotting|trotted|work|circle|lunge", held -> !held.moves().isEmpty());

    private final String asks;
    private final Pattern said;
    private final Predicate<Reserves> held;

    Deed(String asks, String said, Predicate<Reserves> held) {
      this.asks = asks;
      this.said = words(said);
      this.held = held;
    }
  }

  private final Rulebook book;
  private final FaultCollector faults;

  MeanwhileCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  private static Pattern words(String some) {
    return Pattern.compile("\\b(" + some + ")\\b", Pattern.CASE_INSENSITIVE);
  }

  void check() {
    book.rules().values().stream()
        .filter(rule -> rule.outcome() instanceof RuleConclusion.Refers)
        .filter(rule -> rule.text().meanwhile() != null)
        .forEach(this::rule);
  }

  private void rule(RuleEntry rule) {
    Matcher clause = CLAUSE.matcher(rule.text().meanwhile());
    while (clause.find()) {
      String said = clause.group().strip();
      if (!FORBIDS.matcher(said).find() || NOT_MEANT.matcher(said).find()) {
        continue;
      }
      for (Deed deed : Deed.values()) {
        if (deed.said.matcher(said).find() && !deed.held.test(rule.text().reserves())) {
          faults.at(
              rule,
              "the meanwhile says \"" + said + "\" and holds nothing of the kind back",
              "write reserves: with the " + deed.asks + " that wait, or say it otherwise");
          return;
        }
      }
    }
  }
}
