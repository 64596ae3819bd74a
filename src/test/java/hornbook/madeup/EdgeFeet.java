package hornbook.madeup;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.CrossChecks;
import hornbook.assessment.read.ReadResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Feet at the ends of what the format allows: each number is the least, the most, the usual or not
 * measured; each list empty or full; the wall of one state all round, of two, or not mapped.
 */
final class EdgeFeet {
  private static final double USUAL_EDGE = 180;

  private EdgeFeet() {}

  /** A foot known by its number, and free of contradictions. */
  static Assessment foot(int number) {
    Random random = new Random(number * 0x9E3779B97F4A7C15L);
    Assessment foot = drawn(random);
    while (!CrossChecks.hold(foot)) {
      foot = drawn(random);
    }
    return foot;
  }

  private static Assessment drawn(Random random) {
    Limb limb = Limb.values()[random.nextInt(Limb.values().length)];
    Assessment foot = blank(limb);
    int known = 1 + random.nextInt(4);
    for (FieldValue field : Fields.values(foot).toList()) {
      Object value = random.nextInt(4) < known ? value(field.field(), random) : null;
      if (value != null && field.value() == null && !field.path().equals("horse.ageDays")) {
        foot = AssessmentEdit.of(field.path()).with(foot, value);
      }
    }
    List<WallStretch> wall = random.nextInt(5) == 0 ? null : wall(random);
    return AssessmentEdit.of("feet[0].wall").with(foot, wall);
  }

  private static Assessment blank(Limb limb) {
    String text =
        "format: %s\nfeet: [{limb: %s}, {limb: %s}]\n"
            .formatted(Fields.FORMAT, limb.word(), limb.pair().word());
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ((ReadResult.Good) AssessmentReader.read(bytes, "blank", List.of())).assessment();
  }

  private static Object value(Field field, Random random) {
    if (field.kind() instanceof OneWord word) {
      return word.options().get(random.nextInt(word.options().size()));
    }
    if (field.kind() instanceof WordList list) {
      return random.nextBoolean() ? List.of() : List.copyOf(list.each().options());
    }
    if (field.kind() instanceof Flag) {
      return random.nextBoolean();
    }
    if (field.kind() instanceof WholeNumber whole) {
      return random.nextBoolean() ? whole.least() : whole.most();
    }
    if (field.kind() instanceof Amount amount) {
      double usual = amount.bare().toKept(amount.example());
      return List.of(amount.leastKept(), amount.mostKept(), usual, usual).get(random.nextInt(4));
    }
    return null;
  }

  private static List<WallStretch> wall(Random random) {
    List<WallStretch> wall = new ArrayList<>();
    WallState all = WallState.values()[random.nextInt(WallState.values().length)];
    double edge = random.nextBoolean() ? USUAL_EDGE : 20;
    for (Side side : Side.values()) {
      boolean same = random.nextInt(3) > 0;
      WallState state = same ? all : WallState.values()[random.nextInt(WallState.values().length)];
      double from = random.nextInt(4) == 0 ? edge / 2 : 0;
      if (random.nextInt(6) > 0) {
        wall.add(
            new WallStretch(
                random.nextInt(20) == 0 ? null : side,
                from,
                edge,
                state,
                List.of(0.0, 6.0, 250.0).get(random.nextInt(3)),
                random.nextBoolean() ? null : List.of(1.0, 9.0, 40.0).get(random.nextInt(3)),
                state == WallState.FLARED ? 20.0 : null,
                random.nextBoolean() ? null : random.nextBoolean(),
                random.nextBoolean() ? null : random.nextBoolean(),
                random.nextBoolean() ? null : random.nextBoolean()));
      }
    }
    return wall.isEmpty() ? null : wall;
  }
}
