package hornbook.study.generate;

import hornbook.assessment.Assessment;
import hornbook.rulebook.Rulebook;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;

/**
 * Makes up feet to run rules over. Every other one is drawn field by field, with numbers about the
 * limits that rules hold them against; the rest are two known feet crossed, so that what fires one
 * rule meets what fires another. A foot is known by its seed and number alone.
 */
public final class GeneratedFeet {
  private final RandomFoot drawn;
  private final CrossedFeet crossed;
  private final long seed;

  /**
   * @param known feet of cases, to cross; there may be none
   */
  public GeneratedFeet(Rulebook book, List<Assessment> known, long seed) {
    this.drawn = new RandomFoot(book);
    this.crossed = known.isEmpty() ? null : new CrossedFeet(known);
    this.seed = seed;
  }

  /** An assessment whose foot in hand comes first. */
  public Assessment foot(int number) {
    UniformRandomProvider random = new SplitMix64(seed * 0x9E3779B97F4A7C15L + number);
    random.nextLong();
    boolean cross = crossed != null && number % 2 == 1;
    return cross ? crossed.foot(random) : drawn.foot(random);
  }
}
