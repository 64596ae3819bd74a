package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.assessment.tree.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** Reading, as tests want it. */
public final class Read {
  private Read() {}

  /** A file with every field the format had first, as its description shows it. */
  public static String full() {
    try (InputStream file = Read.class.getResourceAsStream("full.yaml")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    }
  }

  public static ReadResult result(String text, String... set) {
    List<Setting> settings = Stream.of(set).map(Setting::parse).toList();
    return AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), "foot.yaml", settings);
  }

  public static Assessment good(String text, String... set) {
    ReadResult result = result(text, set);
    assertThat(result).isInstanceOf(ReadResult.Good.class);
    return ((ReadResult.Good) result).assessment();
  }

  /** The messages of a file that must not pass. */
  public static List<String> faults(String text, String... set) {
    ReadResult result = result(text, set);
    assertThat(result).isInstanceOf(ReadResult.Faulty.class);
    return ((ReadResult.Faulty) result).faults().stream().map(Fault::message).toList();
  }

  /** A file of one left fore with these lines under the foot. */
  public static String foot(String... lines) {
    return "format: hornbook-assessment/1\nfeet:\n  - limb: left-fore\n    "
        + String.join("\n    ", lines)
        + "\n";
  }
}
