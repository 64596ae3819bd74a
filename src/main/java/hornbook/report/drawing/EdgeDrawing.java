package hornbook.report.drawing;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.foot.shape.EdgePoint;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.SideSurvey;
import hornbook.plan.Plan;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import hornbook.report.words.PlainWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The ground edge in plain characters, as it lies before the farrier with the foot held up and the
 * toe at the top: the state of the wall all round, nails by their numbers, clips by C.
 */
public final class EdgeDrawing {
  private static final double USUAL_COLUMN = 3;
  private static final int BESIDE = 20;
  private static final int MOST_COLUMNS = 60;
  private static final double STEP = 0.5;
  private static final char UNMAPPED = '?';
  private static final char CLIP = 'C';

  private final Plan plan;
  private final FootMap map;
  private final GroundOutline outline;
  private final Map<Character, String> used = new LinkedHashMap<>();
  private final double column;
  private final int half;
  private final char[][] grid;

  private EdgeDrawing(Plan plan, FootMap map) {
    this.plan = plan;
    this.map = map;
    this.outline = map.outline();
    this.column =
        Math.max(
            USUAL_COLUMN, outline.width() / Math.min(MOST_COLUMNS, PageWidth.columns() - BESIDE));
    this.half = (int) Math.ceil(outline.width() / 2 / column) + 1;
    this.grid = new char[(int) Math.round(outline.bearingLength() / row()) + 1][2 * half + 1];
  }

  /** Lines to be kept as they are; none where wall or outline are not known. */
  public static List<String> of(Plan plan) {
    FootMap map = FootMap.of(plan.advice(), plan.foot());
    return map.outline() == null || map.wall() == null
        ? List.of()
        : new EdgeDrawing(plan, map).lines();
  }

  private List<String> lines() {
    for (char[] line : grid) {
      Arrays.fill(line, ' ');
    }
    map.sides().forEach(this::wall);
    clips();
    nails();
    List<String> lines = new ArrayList<>();
    boolean innerLeft = left(Side.MEDIAL);
    String indent = " ".repeat(9);
    lines.add(indent + " ".repeat(half - 1) + "TOE");
    int rows = grid.length;
    while (new String(grid[rows - 1]).isBlank()) {
      rows--;
    }
    for (int i = 0; i < rows; i++) {
      boolean middle = i == rows / 2;
      String before = middle ? (innerLeft ? "  inner  " : "  outer  ") : indent;
      String after = middle ? (innerLeft ? "  outer" : "  inner") : "";
      lines.add((before + new String(grid[i]) + after).stripTrailing());
    }
    lines.add(indent + " ".repeat(half - 2) + "HEELS");
    lines.addAll(legend());
    return lines;
  }

  private double row() {
    return 2 * column;
  }

  /** With the foot held up a left foot has its inner side on the left. */
  private boolean left(Side side) {
    boolean leftFoot = plan.foot().limb().word().startsWith("left");
    return leftFoot == (side == Side.MEDIAL);
  }

  private void wall(SideSurvey side) {
    double scale = Math.min(1, outline.edgeLength() / side.edge());
    for (double at = 0; at <= side.edge(); at += STEP) {
      WallState state = null;
      for (MappedPiece piece : side.pieces()) {
        state = piece.from() <= at && at <= piece.to() ? piece.stretch().state() : state;
      }
      char mark = state == null ? UNMAPPED : mark(state);
      used.putIfAbsent(mark, state == null ? "not on the map" : PlainWords.of(state.word()));
      put(side.side(), at * scale, mark);
    }
  }

  private static char mark(WallState state) {
    return switch (state) {
      case SOUND -> '#';
      case FLARED -> '~';
      case CRACKED -> '!';
      case SEPARATED -> '=';
      case CRUMBLING -> '%';
      case BROKEN_AWAY -> '.';
      case RESECTED -> '-';
      case REPAIRED -> '@';
    };
  }

  private void clips() {
    for (PlannedClip clip : plan.clips()) {
      used.put(CLIP, "clip");
      put(clip.side() == null ? Side.MEDIAL : clip.side(), clip.at(), CLIP);
    }
  }

  private void nails() {
    Map<Side, Integer> count = new LinkedHashMap<>();
    for (PlannedNail nail : plan.nails()) {
      int number = count.merge(nail.side(), 1, Integer::sum);
      put(nail.side(), nail.at().value(), Character.forDigit(number, Character.MAX_RADIX));
    }
  }

  private void put(Side side, double at, char mark) {
    EdgePoint point = outline.at(Math.min(at, outline.edgeLength()));
    int across = (int) Math.round(point.out() / column);
    int line = (int) Math.round(point.back() / row());
    grid[line][left(side) ? half - across : half + across] = mark;
  }

  private List<String> legend() {
    List<String> words = new ArrayList<>();
    used.forEach((mark, word) -> words.add(mark + " " + word));
    if (!plan.nails().isEmpty()) {
      words.add("1 2 3 nails from the toe back");
    }
    return LineWrap.lines(
        "Ground face, foot held up. " + String.join("   ", words), PageWidth.columns(), "", "");
  }
}
