package hornbook.bench.twin;

import hornbook.advice.fact.FactSheet;
import java.util.List;

/**
 * The rules on nailing and on calling the vet, with those they build on, as plain Java has them: an
 * if a rule. What an engine costs is measured against them, and a test holds the two together.
 */
public final class HandRules {
  /** What one rule concludes, of a technique, a support, a danger, a finding or a caution. */
  public record Conclusion(String rule, String kind, String subject) {}

  private HandRules() {}

  /** Everything concluded of a foot. */
  public static List<Conclusion> of(FactSheet sheet) {
    HandFoot foot = new HandFoot(sheet);
    FindingsByHand.look(foot);
    NailingByHand.look(foot);
    ReferralByHand.look(foot);
    return foot.conclusions();
  }
}
