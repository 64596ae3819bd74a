package hornbook.study;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Assessments for the tests of what is made of them. */
public final class Given {
  private Given() {}

  /** An assessment written without its first line. */
  public static ReadResult.Good written(String text) {
    String file = "format: hornbook-assessment/1\n" + text;
    return good(AssessmentReader.read(file.getBytes(StandardCharsets.UTF_8), "written", List.of()));
  }

  /**
   * A grown horse with its left fore foot alone.
   *
   * @param fields the fields of the foot, as YAML writes them in one line: {@code lameness: 0, …}
   */
  public static Assessment leftFore(String fields) {
    return written(
            "horse: {weight: 480 kg, work: sport, ageYears: 9}\n"
                + "visit: {vet: informed}\n"
                + "feet: [{limb: left-fore, "
                + fields
                + "}]\n")
        .assessment();
  }

  public static ReadResult.Good read(Path file) {
    try {
      return good(AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of()));
    } catch (IOException unreadable) {
      throw new AssertionError(unreadable);
    }
  }

  public static Assessment exercise(String name) {
    return read(Shipped.EXERCISES.resolve(name + ".yaml")).assessment();
  }

  public static ReadResult.Good good(ReadResult read) {
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return (ReadResult.Good) read;
  }
}
