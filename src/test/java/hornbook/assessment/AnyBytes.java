package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.assessment.tree.Fault;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What holds of any bytes: an assessment comes out, or faults with their places, safe to print. A
 * fuzzer that watches which code its bytes reach calls these by their name.
 */
final class AnyBytes {
  private static final byte[] FULL = Read.full().getBytes(StandardCharsets.UTF_8);
  private static final List<String> QUANTITIES =
      List.of("horse.weight", "feet[0].measures.toeAngle", "feet[0].measures.toeLength");

  private AnyBytes() {}

  /** Bytes as a file, YAML or JSON. */
  static final class AsFile {
    private AsFile() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
      readOrRefused(AssessmentReader.read(bytes, "any", List.of()));
    }
  }

  /** Bytes as what stands behind {@code --set}. */
  static final class AsSetting {
    private AsSetting() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
      set(new String(bytes, StandardCharsets.UTF_8));
    }
  }

  /** Bytes as an amount with its unit. */
  static final class AsQuantity {
    private AsQuantity() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
      String text = new String(bytes, StandardCharsets.UTF_8);
      Quantity read = Quantity.parse(text);
      if (read != null) {
        assertThat(read.number()).as(text).isFinite();
      }
      QUANTITIES.forEach(path -> set(path + "=" + text));
    }
  }

  private static void set(String text) {
    readOrRefused(AssessmentReader.read(FULL, "any", List.of(Setting.parse(text))));
  }

  private static void readOrRefused(ReadResult result) {
    if (result instanceof ReadResult.Good good) {
      assertThat(good.assessment().feet()).isNotEmpty();
      return;
    }
    List<Fault> faults = ((ReadResult.Faulty) result).faults();
    assertThat(faults).isNotEmpty();
    for (Fault fault : faults) {
      assertThat(fault.line()).isPositive();
      assertThat(fault.column()).isPositive();
      assertThat(fault.found()).isNotBlank();
      assertThat(fault.allowed()).isNotBlank();
      assertThat(fault.message().codePoints()).noneMatch(AnyBytes::raw);
      assertThat(fault.message()).doesNotContain("Exception", "java.");
    }
  }

  /** Whether a character would upset the line of a terminal that shows it, or turn it round. */
  private static boolean raw(int point) {
    boolean turns = point >= 0x202a && point <= 0x202e || point >= 0x2066 && point <= 0x2069;
    return turns
        || switch (Character.getType(point)) {
          case Character.CONTROL,
              Character.SURROGATE,
              Character.LINE_SEPARATOR,
              Character.PARAGRAPH_SEPARATOR ->
              true;
          default -> false;
        };
  }
}
