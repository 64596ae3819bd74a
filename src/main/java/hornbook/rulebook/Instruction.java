package hornbook.rulebook;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Move;
import hornbook.rulebook.reserve.Reserves;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * A sentence of the job sheet, as data: what it says, with holes for the numbers, and its ground.
 *
 * @param id section and name, as {@code dress.sole}
 * @param cuts what the farrier who follows it takes off the foot
 * @param moves what the horse is asked to do
 */
public record Instruction(
    String id, String says, List<String> sources, Basis basis, Set<Cut> cuts, Set<Move> moves) {
  /** Whether what it tells to do is held back. */
  public boolean heldBackBy(Reserves reserves) {
    return !Collections.disjoint(cuts, reserves.cuts())
        || !Collections.disjoint(moves, reserves.moves());
  }
}
