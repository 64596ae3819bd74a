package hornbook.report.drawing;

import hornbook.foot.wall.WallGroup;

/** The pattern for each state of the wall. */
final class WallFills {
  private WallFills() {}

  /** Null for sound wall, which is plain. */
  static Fill of(WallGroup group) {
    return switch (group) {
      case SOUND -> null;
      case WEAK -> Fill.DOTS;
      case SEPARATED -> Fill.HATCH;
      case MISSING -> Fill.CROSS;
    };
  }
}
