package hornbook.foot;

import hornbook.assessment.Measures;
import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.shape.OutlineShape;
import hornbook.foot.shape.SideProfile;
import hornbook.foot.wall.CrackRegions;
import hornbook.foot.wall.NailingLimits;
import hornbook.foot.wall.WallSurvey;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The trade's own figures as the tests use them, and short ways to write down a foot. */
public final class Trade {
  /** Fore widest at the middle, hind two thirds back (usda-1916); heel width our own assumption. */
  public static final OutlineShape SHAPE = new OutlineShape(0.5, 2.0 / 3, 2.0 / 3);

  /** Five equal arcs round the ground edge (usda-1916); heel start our own assumption. */
  public static final CrackRegions REGIONS = new CrackRegions(0.2, 0.6, 0.8);

  /**
   * Spacing hunting-1895 (1 in); rearmost stashak-7 and usda-1916; thickness from memory; the
   * clearances common practice, no source.
   */
  static final NailingLimits NAILING = new NailingLimits(25.4, 20, 10, 6, 1, 2.0 / 3, 0.9, REGIONS);

  /** lungwitz-1913: 4.2 to 12.7, mean 8.5 mm a month. */
  static final GrowthRates GROWTH = new GrowthRates(4.2, 8.5, 12.7);

  /** Toe length by weight (turner-1992, from memory). */
  static final UsualToeLength USUAL_TOE =
      new UsualToeLength(
          List.of(
              new UsualToeLength.Band(360, 400, 76),
              new UsualToeLength.Band(425, 475, 82.5),
              new UsualToeLength.Band(525, 575, 89)));

  /** Standing 0.57 on the fore feet (dutto-2004); 11.59 and 10.21 N/kg (merkens-1993). */
  static final LoadRates LOAD = new LoadRates(0.57, 11.59, 10.21);

  static final FootLimits LIMITS =
      new FootLimits(
          SHAPE,
          0.12,
          NAILING,
          19,
          GROWTH,
          USUAL_TOE,
          365,
          new TrimLimits(6, 10),
          10,
          120,
          28,
          300,
          28);

  private Trade() {}

  public static SideProfile profile(double toe, double heel, double angle, double bearing) {
    return new SideProfile(toe, heel, angle, angle, 50, bearing, bearing / 2, 0);
  }

  /** A foot of which only the ground face was measured. */
  public static Measures ground(Double bearing, Double width, Double widest) {
    Map<String, Object> known = new HashMap<>();
    known.put("bearingLength", bearing);
    known.put("width", width);
    known.put("toeToWidest", widest);
    return Given.a(Measures.class, known);
  }

  /** A map that reaches the heel on the side it goes furthest; the other side is as long. */
  public static WallSurvey whole(List<WallStretch> wall) {
    double end = wall.stream().mapToDouble(WallStretch::to).max().orElse(Double.NaN);
    return WallSurvey.of(wall, end, 0);
  }

  public static GroundOutline outline(double bearing, double width, double widest) {
    return GroundOutline.of(ground(bearing, width, widest), true, SHAPE);
  }

  public static WallStretch stretch(Side side, double from, double to, WallState state) {
    return stretch(side, from, to, state, null, null, null);
  }

  public static WallStretch sound(Side side, double from, double to, Double thickness) {
    return stretch(side, from, to, WallState.SOUND, null, thickness, null);
  }

  public static WallStretch stretch(
      Side side,
      Double from,
      Double to,
      WallState state,
      Double height,
      Double thickness,
      Boolean moist) {
    Map<String, Object> known = new HashMap<>();
    known.put("side", side);
    known.put("from", from);
    known.put("to", to);
    known.put("state", state);
    known.put("height", height);
    known.put("thickness", thickness);
    known.put("moist", moist);
    return Given.a(WallStretch.class, known);
  }
}
