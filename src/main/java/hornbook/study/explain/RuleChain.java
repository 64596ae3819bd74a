package hornbook.study.explain;

import hornbook.advice.fact.Truth;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Basis;
import java.util.List;
import java.util.Optional;

/** One rule on a foot, with every link from the fields of the file to its conclusion. */
public record RuleChain(RuleEntry rule, Truth truth, List<ChainLink> links) {
  public boolean fired() {
    return truth == Truth.TRUE;
  }

  /**
   * What keeps the rule silent: the first condition that fails; where none fails, the first that is
   * unknown. Empty where the rule fired.
   */
  public Optional<ChainLink> obstacle() {
    return first(Truth.FALSE).or(() -> first(Truth.UNKNOWN));
  }

  /** The weakest ground among the rule's own and that of every link, however far down. */
  public Basis basis() {
    Basis weakest = rule.basis();
    for (ChainLink link : links) {
      weakest = link.asked() == null ? weakest : weakest.weaker(link.asked().basis());
      for (RuleChain maker : link.decidingMakers()) {
        weakest = weakest.weaker(maker.basis());
      }
    }
    return weakest;
  }

  /** How many conditions do not hold. */
  public int missing() {
    return (int) links.stream().filter(link -> link.truth() != Truth.TRUE).count();
  }

  /** How many conditions are known to fail. */
  public int failing() {
    return (int) links.stream().filter(link -> link.truth() == Truth.FALSE).count();
  }

  private Optional<ChainLink> first(Truth truth) {
    return links.stream().filter(link -> link.truth() == truth).findFirst();
  }
}
