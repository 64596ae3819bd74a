package hornbook.foot.wall;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.number.Interval;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import java.util.ArrayList;
import java.util.List;

/**
 * The ground edge of both sides as mapped. Shares are in per cent of the whole edge, from what is
 * certainly so to what may be so, since unmapped edge stays unknown.
 *
 * @param edgeUnknown whether the length of the edge is not known, because width or bearing length
 *     were not measured: then the rows may be all of it or a small part
 */
public record WallSurvey(SideSurvey medial, SideSurvey lateral, boolean edgeUnknown) {

  /**
   * Surveys a mapped wall; null when it was not mapped.
   *
   * @param outline gives the edge length of a side; null when it cannot be drawn
   * @param edgeSlack a map whose furthest end comes within this share of the outlined edge length
   *     is taken to reach the heel, as is one that goes beyond: the tape on the foot outranks the
   *     outline. 0 keeps strictly to the outline.
   */
  public static WallSurvey of(List<WallStretch> wall, GroundOutline outline, double edgeSlack) {
    return of(wall, outline == null ? Unknown.NUMBER : outline.edgeLength(), edgeSlack);
  }

  /** The same where the edge of a side has this length, mm; may be unknown. */
  public static WallSurvey of(List<WallStretch> wall, double model, double edgeSlack) {
    if (wall == null) {
      return null;
    }
    List<MappedPiece> medial = MappedPiece.inOrder(of(Side.MEDIAL, wall));
    List<MappedPiece> lateral = MappedPiece.inOrder(of(Side.LATERAL, wall));
    return new WallSurvey(
        new SideSurvey(Side.MEDIAL, edge(medial, model, edgeSlack), medial),
        new SideSurvey(Side.LATERAL, edge(lateral, model, edgeSlack), lateral),
        Unknown.is(model));
  }

  /** Share of the whole edge in the state. */
  public Interval share(WallState state) {
    return share(medial.length(state) + lateral.length(state));
  }

  /** Share of the whole edge in the group of states. */
  public Interval share(WallGroup group) {
    return share(medial.length(group) + lateral.length(group));
  }

  /** Share of the whole edge that is missing or separated. */
  public Interval defectShare() {
    return share(medial.defectLength() + lateral.defectLength());
  }

  /**
   * Share of the whole edge that is missing or separated to more than a height, or to none known.
   */
  public Interval tallDefectShare(double height) {
    return share(medial.tallDefectLength(height) + lateral.tallDefectLength(height));
  }

  /** Share of the whole edge that is sound, or flared and so dressed. */
  public Interval strongShare() {
    return share(
        medial.length(WallGroup.SOUND)
            + medial.length(WallState.FLARED)
            + lateral.length(WallGroup.SOUND)
            + lateral.length(WallState.FLARED));
  }

  /** Length missing or separated behind a share of the edge, on the side that has lost more, mm. */
  public Interval defectBehind(double share) {
    return medial.defectBehind(share).max(lateral.defectBehind(share));
  }

  /** Share of the whole edge that bears: all but what is missing or separated. */
  public Interval bearingShare() {
    Interval defect = defectShare();
    return Interval.between(100 - defect.high(), 100 - defect.low());
  }

  /** The longest unbroken run that is missing or separated, on a side or across the toe, mm. */
  public Interval longestDefect() {
    return medial.longestDefect().max(lateral.longestDefect()).max(defectAcrossToe());
  }

  /** The run that is missing or separated through the middle of the toe, both sides joined, mm. */
  public Interval defectAcrossToe() {
    return medial.defectFromToe().plus(lateral.defectFromToe());
  }

  /**
   * Height of the tallest stretch that is missing or separated, mm; 0 when there is none. Without
   * an upper bound where such a stretch has no height or edge is unmapped.
   */
  public Interval tallestDefect() {
    double tallest = 0;
    boolean open = !(unmapped() == 0);
    for (SideSurvey side : sides()) {
      for (MappedPiece piece : side.pieces()) {
        if (piece.group().defect()) {
          Double height = piece.stretch().height();
          open |= height == null;
          tallest = height == null ? tallest : Math.max(tallest, height);
        }
      }
    }
    return new Interval(tallest, open ? Double.POSITIVE_INFINITY : tallest);
  }

  /**
   * Thickness of the thinnest sound wall between the middle of the toe and a distance along the
   * edge, mm. Down to 0 where sound wall there has no thickness given or edge is unmapped. Unknown
   * when no thickness there is known.
   *
   * @param rearmost distance along the edge; when unknown the wall looked at may end anywhere, and
   *     there is no upper bound
   */
  public Interval thinnestSound(double rearmost) {
    double reach = Unknown.is(rearmost) ? Double.POSITIVE_INFINITY : rearmost;
    double thinnest = Double.POSITIVE_INFINITY;
    boolean open = false;
    for (SideSurvey side : sides()) {
      double mapped = 0;
      for (MappedPiece piece : side.pieces()) {
        if (piece.from() < reach) {
          mapped += Math.min(reach, piece.to()) - piece.from();
          if (piece.group() == WallGroup.SOUND) {
            Double thickness = piece.stretch().thickness();
            open |= thickness == null;
            thinnest = thickness == null ? thinnest : Math.min(thinnest, thickness);
          }
        }
      }
      open |= !(Math.min(reach, side.edge()) - mapped < SideSurvey.SAME);
    }
    if (Double.isInfinite(thinnest)) {
      return Interval.UNKNOWN;
    }
    double high = Unknown.is(rearmost) ? Double.POSITIVE_INFINITY : thinnest;
    return new Interval(open ? 0 : thinnest, high);
  }

  /**
   * Whether some stretch that is missing or separated is moist: false only when the whole edge is
   * mapped and every such stretch was found dry, null when unknown.
   */
  public Boolean moistDefect() {
    boolean open = !(unmapped() == 0);
    for (SideSurvey side : sides()) {
      for (MappedPiece piece : side.pieces()) {
        if (piece.group().defect()) {
          if (Boolean.TRUE.equals(piece.stretch().moist())) {
            return true;
          }
          open |= piece.stretch().moist() == null && !Boolean.TRUE.equals(piece.stretch().damp());
        }
      }
    }
    return open ? null : Boolean.FALSE;
  }

  /** Length of the edge of both sides, mm. */
  public double edge() {
    return medial.edge() + lateral.edge();
  }

  /** Length of both sides that no stretch covers, mm. */
  public double unmapped() {
    return medial.unmapped() + lateral.unmapped();
  }

  private Interval share(double certain) {
    return SideSurvey.share(certain, unmapped(), edge());
  }

  private List<SideSurvey> sides() {
    return List.of(medial, lateral);
  }

  private static List<WallStretch> of(Side side, List<WallStretch> wall) {
    List<WallStretch> some = new ArrayList<>(wall.size());
    for (WallStretch stretch : wall) {
      if (stretch.side() == side) {
        some.add(stretch);
      }
    }
    return some;
  }

  private static double edge(List<MappedPiece> pieces, double model, double slack) {
    double end = pieces.isEmpty() ? 0 : pieces.get(pieces.size() - 1).to();
    return end >= (1 - slack) * model ? end : model;
  }
}
