package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.Technique;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Which sentences stand on a sheet, in which order and with which numbers, for feet that bring up
 * every sentence. When a sheet is meant to change, {@code mvn test -Dtest=ExactSheetsTest -Dbless}
 * writes them anew: read the difference before it is committed.
 */
class ExactSheetsTest {
  private static final Path FOLDER = Path.of("src/test/resources/hornbook/plan");

  /** What is asked of the sheets by turns. */
  private static final List<PlanWishes> WISHES =
      List.of(
          Jobs.ANYWAY,
          Jobs.ANYWAY.withSupports(List.of("clips", "longer-branch", "rolled-toe")),
          Jobs.ANYWAY.withAdd(8.0).withTargetRatio(2.5).withTargetAngle(50.0),
          Jobs.ANYWAY.withWedge(3.0).withDip(4.0));

  @Test
  void every_sheet_says_what_it_said() throws IOException {
    StringBuilder sheets = new StringBuilder();
    Technique[] all = Technique.values();
    String[] feet = Files.readString(FOLDER.resolve("feet.txt")).split("---\n");
    for (int foot = 0; foot < feet.length; foot++) {
      Advice advice = Jobs.advise(feet[foot]);
      for (int turn = 0; turn < 4; turn++) {
        Technique technique = all[(foot + 3 * turn) % all.length];
        PlanWishes wishes = WISHES.get((foot + turn) % WISHES.size());
        sheets.append("== foot ").append(foot + 1).append(", ").append(technique.id());
        sheets.append('\n').append(sheet(Jobs.plan(advice, technique, wishes)));
      }
    }
    Path file = FOLDER.resolve("sheets.txt");
    if (System.getProperty("bless") != null) {
      Files.writeString(file, sheets);
    }
    assertThat(sheets.toString())
        .as("to bless: mvn test -Dtest=ExactSheetsTest -Dbless")
        .isEqualTo(Files.readString(file));
  }

  private static String sheet(Plan plan) {
    List<String> lines = new ArrayList<>();
    for (SheetPart part : SheetPart.values()) {
      for (SheetLine line : plan.lines(part)) {
        lines.add(part.key() + ": " + said(line));
      }
    }
    for (ClockStep step : plan.steps()) {
      lines.add("step: " + said(step.says()) + " in " + figure(step.minutes()));
    }
    for (Figure material : plan.materials()) {
      lines.add("material: " + material.label() + " " + figure(material));
    }
    lines.add("next visit: " + (plan.interval() == null ? "none" : figure(plan.interval())));
    lines.add("missing: " + plan.missing().size());
    return String.join("\n", lines) + "\n";
  }

  private static String said(SheetLine line) {
    Map<String, String> holes = new TreeMap<>();
    line.holes().forEach((name, filled) -> holes.put(name, filled(filled)));
    return line.instruction().id()
        + holes.entrySet().stream()
            .map(one -> " " + one.getKey() + "=" + one.getValue())
            .collect(Collectors.joining());
  }

  private static String filled(Placeholder filled) {
    return filled instanceof Figure figure
        ? figure(figure)
        : filled instanceof Placeholder.Place place
            ? place.side() + " " + number(place.from()) + ".." + number(place.to())
            : filled instanceof Placeholder.Word word
                ? word.text()
                : ((Placeholder.On) filled).day().toString();
  }

  private static String figure(Figure figure) {
    String low = number(figure.low());
    String high = number(figure.high());
    return (low.equals(high) ? low : low + ".." + high) + figure.unit();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
  }
}
