package hornbook.cli.file;

import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Reads and checks every assessment of a command before anything is made of one of them. */
public final class Assessments {
  private Assessments() {}

  /**
   * The assessments, in the order of the files.
   *
   * @throws Failure with the faults of all files: code 66 where one could not be read, else 65
   */
  public static List<ReadResult.Good> read(
      List<String> files, List<Setting> set, Surroundings surroundings) {
    if (Collections.frequency(files, InputFile.STANDARD_INPUT) > 1) {
      throw Failure.usage("standard input can be read only once", "give - once");
    }
    List<ReadResult.Good> good = new ArrayList<>();
    FaultsFound found = new FaultsFound();
    for (String file : files) {
      try {
        byte[] bytes = InputFile.assessment(file, surroundings);
        ReadResult result = AssessmentReader.read(bytes, InputFile.shown(file), set);
        if (result instanceof ReadResult.Faulty faulty) {
          found.in(faulty.faults());
        } else {
          good.add((ReadResult.Good) result);
        }
      } catch (Failure unread) {
        found.unread(unread);
      }
    }
    found.stopIfAny();
    return good;
  }
}
