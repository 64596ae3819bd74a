package hornbook.advice.fact;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is handed over of a foot is what the table has of it, without the rows of its lists. */
class FlatFieldsTest {
  @Test
  void are_those_of_the_table_for_every_foot_of_every_exercise() throws IOException {
    int second = 0;
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
      Assessment assessment = ((ReadResult.Good) read).assessment();
      for (int foot = 0; foot < assessment.feet().size(); foot++) {
        String own = "feet[" + foot + "].";
        List<FieldValue> expected =
            Fields.values(assessment)
                .filter(one -> !one.path().startsWith("feet[") || one.path().startsWith(own))
                .filter(one -> !one.path().replaceFirst("^feet\\[.]", "").contains("["))
                .toList();
        List<FieldValue> given = new ArrayList<>();
        FlatFields.of(foot)
            .each(
                assessment, (field, path, value) -> given.add(new FieldValue(field, path, value)));
        assertThat(given).as("foot %d of %s", foot, file).isEqualTo(expected);
        second += foot;
      }
    }
    assertThat(second).as("feet that come second").isPositive();
  }
}
