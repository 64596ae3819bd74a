package hornbook.cli.dialogue;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.form.OwnComments;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.cli.file.ResultFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The file an interview is written to, after every answer. */
public final class InterviewFile {
  private final Surroundings surroundings;
  private final Units units;
  private final String schema;
  private final LocalDate today;
  private String name;
  private boolean ours;

  /**
   * @param name null for a name after the foot and the day
   * @param ours whether a file of that name may be replaced
   * @param schema where the JSON Schema lies, or null
   */
  public InterviewFile(
      Surroundings surroundings,
      String name,
      boolean ours,
      Units units,
      String schema,
      LocalDate today) {
    this.surroundings = surroundings;
    this.name = name;
    this.ours = ours;
    this.units = units;
    this.schema = schema;
    this.today = today;
  }

  /** As the user would type it. */
  String name() {
    return name == null || name.matches("[\\w./:+-]+") ? name : "'" + name + "'";
  }

  boolean toScreen() {
    return InputFile.STANDARD_INPUT.equals(name);
  }

  /** Puts what is known in the file, whole or not at all; on the screen only at the end. */
  void save(Assessment known) {
    if (name == null) {
      name = unused(known.feet().get(0).limb());
    }
    if (toScreen()) {
      return;
    }
    ResultFile file = new ResultFile(name);
    String text = BlankAssessment.write(known, units, schema);
    if (ours) {
      file.write(text);
    } else {
      file.writeNew(text);
      ours = true;
    }
  }

  void show(Assessment known) {
    if (toScreen()) {
      surroundings.print(BlankAssessment.write(known, units, null));
    }
  }

  private String unused(Limb limb) {
    String stem = limb.word() + "-" + today;
    String unused = stem + ".yaml";
    for (int more = 2; Files.exists(Path.of(unused)); more++) {
      unused = stem + "-" + more + ".yaml";
    }
    return unused;
  }

  public static boolean exists(String file) {
    try {
      return Files.exists(Path.of(file));
    } catch (InvalidPathException noName) {
      return false;
    }
  }

  /**
   * What an unfinished file holds, with the feet named that it lacks.
   *
   * @param inPlace whether it is to be written over, which only an assessment in YAML can be
   */
  public static Assessment read(
      String file, List<Limb> limbs, boolean inPlace, Surroundings surroundings) {
    byte[] bytes = InputFile.assessment(file, surroundings);
    ReadResult result = AssessmentReader.read(bytes, file, List.of());
    if (result instanceof ReadResult.Faulty faulty) {
      FaultsFound found = new FaultsFound();
      found.in(faulty.faults());
      found.stopIfAny();
    }
    ReadResult.Good good = (ReadResult.Good) result;
    if (inPlace) {
      spare(file, new String(bytes, StandardCharsets.UTF_8), good);
    }
    List<hornbook.assessment.Foot> feet = new ArrayList<>(good.assessment().feet());
    for (Limb limb : limbs) {
      if (good.assessment().foot(limb).isEmpty()) {
        feet.addAll(BlankAssessment.of(List.of(limb)).feet());
      }
    }
    Assessment known = good.assessment();
    return new Assessment(
        known.units(), known.horse(), known.visit(), List.copyOf(feet), known.kit());
  }

  /** Refuses to write over what an assessment written anew would not hold. */
  private static void spare(String file, String text, ReadResult.Good good) {
    if (text.stripLeading().startsWith("{")) {
      throw wouldBeLost(file + " is JSON");
    }
    if (good.caseFile().isPresent()) {
      throw wouldBeLost(file + " is a case, with more in it than an assessment");
    }
    List<String> comments = OwnComments.in(text, good.assessment());
    if (!comments.isEmpty()) {
      throw wouldBeLost(file + " has comments of your own (" + comments.get(0) + ")");
    }
  }

  private static Failure wouldBeLost(String what) {
    return Failure.usage(
        what + ", and would be lost", "name a file to write to with --output FILE");
  }
}
