package hornbook.rulebook.reserve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a call for the vet holds back.
 *
 * @param techniques the ids of techniques not to be used
 * @param supports the ids of supports not to be used
 * @param cuts what is not to be taken from the foot
 * @param moves what the horse is not to be asked to do
 * @param extent the feet it holds for
 * @param until who or what gives it back
 * @param days how long, where {@code until} is a number of days; otherwise null
 */
public record Reserves(
    List<String> techniques,
    List<String> supports,
    Set<Cut> cuts,
    Set<Move> moves,
    Extent extent,
    Until until,
    Integer days) {
  /** Nothing is held back. */
  public static final Reserves NOTHING =
      new Reserves(List.of(), List.of(), Set.of(), Set.of(), Extent.FOOT, Until.VET_HAS_SEEN, null);

  public Reserves {
    techniques = List.copyOf(techniques);
    supports = List.copyOf(supports);
    cuts = inOrder(Cut.class, cuts);
    moves = inOrder(Move.class, moves);
  }

  private static <E extends Enum<E>> Set<E> inOrder(Class<E> type, Set<E> some) {
    Set<E> ordered = EnumSet.noneOf(type);
    ordered.addAll(some);
    return Collections.unmodifiableSet(ordered);
  }

  public boolean nothing() {
    return techniques.isEmpty() && supports.isEmpty() && cuts.isEmpty() && moves.isEmpty();
  }

  /** Whether a technique or support is held back. */
  public boolean holdsBack(String subject) {
    return techniques.contains(subject) || supports.contains(subject);
  }

  /** Every technique and support held back. */
  public List<String> subjects() {
    List<String> all = new ArrayList<>(techniques);
    all.addAll(supports);
    return all;
  }

  /** The moves alone, for every foot: the whole horse trots, turns and backs. */
  public Reserves movesOfTheHorse() {
    return moves.isEmpty()
        ? NOTHING
        : new Reserves(List.of(), List.of(), Set.of(), moves, Extent.HORSE, until, days);
  }

  /** What either of the two holds back, as far and as long as the stricter of them. */
  public Reserves and(Reserves other) {
    if (nothing()) {
      return other;
    }
    if (other.nothing()) {
      return this;
    }
    Until longer = until.or(other.until);
    return new Reserves(
        both(techniques, other.techniques),
        both(supports, other.supports),
        both(Cut.class, cuts, other.cuts),
        both(Move.class, moves, other.moves),
        extent.or(other.extent),
        longer,
        longer == Until.DAYS ? longest(days, other.days) : null);
  }

  private static Integer longest(Integer one, Integer other) {
    return one == null || other != null && other > one ? other : one;
  }

  private static List<String> both(Collection<String> one, Collection<String> other) {
    Set<String> all = new LinkedHashSet<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }

  private static <E extends Enum<E>> Set<E> both(Class<E> type, Set<E> one, Set<E> other) {
    Set<E> all = EnumSet.noneOf(type);
    all.addAll(one);
    all.addAll(other);
    return all;
  }
}
