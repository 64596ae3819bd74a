package hornbook.advice.engine;

import hornbook.advice.CautionGiven;
import hornbook.advice.FiredRule;
import hornbook.advice.WeakestBasis;
import hornbook.advice.Wording;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Caution;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The warnings among what the rules concluded. */
public final class Cautions {
  private Cautions() {}

  /**
   * Those that fit.
   *
   * @param ground that under everything that fired
   * @param fits given the techniques a caution is kept for, none of them meaning all
   */
  public static List<CautionGiven> of(
      Rulebook book, List<FiredRule> firings, WeakestBasis ground, Predicate<List<String>> fits) {
    List<CautionGiven> given = new ArrayList<>();
    for (FiredRule firing : firings) {
      if (firing.conclusion() instanceof Caution caution) {
        RuleEntry rule = book.rules().get(firing.rule());
        List<String> only = rule.text().techniques();
        if (fits.test(only)) {
          given.add(
              new CautionGiven(
                  caution.id(),
                  Wording.says(rule, caution.because()),
                  rule.id(),
                  only,
                  Wording.sources(rule, caution.because()),
                  ground.under(rule, caution.because())));
        }
      }
    }
    return List.copyOf(given);
  }
}
