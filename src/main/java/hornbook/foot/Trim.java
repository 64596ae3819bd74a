package hornbook.foot;

import hornbook.assessment.Foot;
import hornbook.assessment.Visit;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.Shoeing;
import hornbook.foot.wall.WallGroup;
import java.util.ArrayList;
import java.util.List;

/**
 * What comes off the wall at an ordinary trim, before anything is nailed, bonded or judged. Damage
 * no higher than that is gone when the foot is trimmed. What runs higher is lower by what the
 * farrier said; an amount that is only worked out or usual lowers nothing.
 *
 * @param mm along the wall
 */
public record Trim(double mm, Known known) {
  private static final double DAYS_IN_A_MONTH = 365.25 / 12;

  /** How the amount is known. */
  public enum Known {
    /** The farrier said so. */
    SAID,
    /** Mean growth over the days since the foot was shod. */
    GROWN,
    /** Neither: what a trim usually takes. */
    USUAL
  }

  public static Trim of(Foot foot, Visit visit, GrowthRates growth, TrimLimits limits) {
    Double said = foot.measures().toTrim();
    if (said != null) {
      return new Trim(said, Known.SAID);
    }
    boolean shod = foot.shoeing() != null && foot.shoeing() != Shoeing.UNSHOD;
    if (shod && visit.shodDaysAgo() != null) {
      double grown = growth.mean() * visit.shodDaysAgo() / DAYS_IN_A_MONTH;
      return new Trim(Math.min(limits.most(), grown), Known.GROWN);
    }
    return new Trim(limits.usual(), Known.USUAL);
  }

  /** The wall as it is when the foot is trimmed; null when it was not mapped. */
  public List<WallStretch> off(List<WallStretch> wall) {
    if (wall == null) {
      return null;
    }
    List<WallStretch> left = new ArrayList<>(wall.size());
    for (int i = 0; i < wall.size(); i++) {
      left.add(off(wall.get(i)));
    }
    return left;
  }

  /** A stretch whose damage was not measured keeps it: nobody knows that a trim would take it. */
  private WallStretch off(WallStretch one) {
    if (one.height() == null || one.state() == null || !damaged(one.state()) || mm == 0) {
      return one;
    }
    if (one.height() <= mm) {
      return with(one, WallState.SOUND, null, null);
    }
    boolean exact = known == Known.SAID;
    return exact ? with(one, one.state(), one.height() - mm, one.moist()) : one;
  }

  /** Whether nobody has measured how high this damage runs: the trim may take it off. */
  public boolean lacksHeight(WallStretch one) {
    return mm > 0 && one.state() != null && damaged(one.state()) && one.height() == null;
  }

  /**
   * Whether nobody has said what comes off, and this damage is so low that it may.
   *
   * @param most mm that an ordinary trim takes off
   */
  public boolean lacksAmount(WallStretch one, double most) {
    return known != Known.SAID
        && one.state() != null
        && damaged(one.state())
        && one.height() != null
        && one.height() <= Math.max(mm, most);
  }

  private static boolean damaged(WallState state) {
    return WallGroup.of(state).defect() || state == WallState.CRACKED;
  }

  private static WallStretch with(WallStretch one, WallState state, Double height, Boolean moist) {
    return new WallStretch(
        one.side(),
        one.from(),
        one.to(),
        state,
        height,
        one.thickness(),
        one.flare(),
        moist,
        one.damp(),
        one.mealy());
  }
}
