package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.foot.GrowthRates;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * From one visit to the next.
 *
 * @param days between them; -1 where a day is not known
 * @param defects how each defect of the visit before went on; empty without a forecast
 * @param fresh defects of the later visit that lie where there was none
 */
public record VisitStep(
    FootVisit before,
    FootVisit after,
    long days,
    List<DefectGrowth> defects,
    List<WallStretch> fresh) {

  static VisitStep of(FootVisit before, FootVisit after) {
    boolean dated = before.visited() != null && after.visited() != null;
    long days = dated ? ChronoUnit.DAYS.between(before.visited(), after.visited()) : -1;
    JsonNode ahead = before.entry().ahead(before.limb().word());
    GrowthRates rates = rates(ahead.path("growth"));
    double error = ahead.path("measuringError").asDouble();
    List<DefectGrowth> defects = new ArrayList<>();
    List<WallStretch> left = new ArrayList<>(after.defects());
    for (WallStretch now : before.defects()) {
      WallStretch later = over(now, after.defects());
      left.remove(later);
      if (rates != null && days >= 0) {
        boolean mapped = mapped(after, now.side());
        defects.add(DefectGrowth.of(now, later, mapped, days, rates, longer(before, after), error));
      }
    }
    return new VisitStep(before, after, days, List.copyOf(defects), List.copyOf(left));
  }

  /** Whether the shoe stayed on until the later visit; null where nobody noted it. */
  public Boolean stayedOn() {
    Boolean lost = after.foot().lostShoe();
    return lost == null ? null : !lost;
  }

  private static boolean mapped(FootVisit visit, Side side) {
    return visit.foot().wall() != null
        && visit.foot().wall().stream().anyMatch(one -> one.side() == side);
  }

  private static double longer(FootVisit before, FootVisit after) {
    Double was = before.foot().measures().toeLength();
    Double is = after.foot().measures().toeLength();
    return was == null || is == null ? 0 : is - was;
  }

  /** The defect that lies over most of the same edge, or null. */
  private static WallStretch over(WallStretch now, List<WallStretch> later) {
    WallStretch best = null;
    double most = 0;
    for (WallStretch one : later) {
      double common = common(now, one);
      if (one.side() == now.side() && common > most) {
        most = common;
        best = one;
      }
    }
    return best;
  }

  private static double common(WallStretch one, WallStretch other) {
    boolean placed =
        one.from() != null && one.to() != null && other.from() != null && other.to() != null;
    return placed ? Math.min(one.to(), other.to()) - Math.max(one.from(), other.from()) : 0;
  }

  private static GrowthRates rates(JsonNode growth) {
    double slow = growth.path("slow").asDouble();
    double mean = growth.path("mean").asDouble();
    double fast = growth.path("fast").asDouble();
    return 0 < slow && slow <= mean && mean <= fast ? new GrowthRates(slow, mean, fast) : null;
  }
}
