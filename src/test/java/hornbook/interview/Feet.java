package hornbook.interview;

import hornbook.assessment.Amount;
import hornbook.assessment.Assessment;
import hornbook.assessment.AssessmentEdit;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.BlankAssessment;
import hornbook.assessment.Crack;
import hornbook.assessment.CrackDepth;
import hornbook.assessment.CrackPlace;
import hornbook.assessment.CrackStart;
import hornbook.assessment.FieldValue;
import hornbook.assessment.Fields;
import hornbook.assessment.Flag;
import hornbook.assessment.Kind;
import hornbook.assessment.OneWord;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Side;
import hornbook.assessment.Units;
import hornbook.assessment.WholeNumber;
import hornbook.assessment.WordList;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Feet to be interviewed about. */
final class Feet {
  private Feet() {}

  /** The exercises that come with the program. */
  static List<Assessment> exercises() throws IOException {
    List<Assessment> all = new ArrayList<>();
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      all.add(read(Files.readAllBytes(file)));
    }
    return all;
  }

  static boolean valid(Assessment assessment) {
    byte[] file = written(assessment, Units.MM);
    return AssessmentReader.read(file, "", List.of()) instanceof ReadResult.Good;
  }

  static byte[] written(Assessment assessment, Units units) {
    return BlankAssessment.write(assessment, units, null).getBytes(StandardCharsets.UTF_8);
  }

  static Assessment read(byte[] file) {
    return ((ReadResult.Good) AssessmentReader.read(file, "", List.of())).assessment();
  }

  /** With everything changed or filled in at random, as far as it stays possible. */
  static Assessment shuffled(Assessment whole, Random random, double share) {
    Assessment made = whole;
    for (FieldValue field : Fields.values(whole).toList()) {
      boolean row = field.path().contains(".wall[") || field.path().contains(".cracks[");
      boolean age = field.field().name().startsWith("age");
      if (!row && !age && !field.field().required() && random.nextDouble() < share) {
        Object value = any(field.field().kind(), field.field().name(), random);
        if (value != null) {
          Assessment changed = AssessmentEdit.of(field.path()).with(made, value);
          made = valid(changed) ? changed : made;
        }
      }
    }
    return made;
  }

  private static Object any(Kind kind, String name, Random random) {
    if (kind instanceof OneWord word) {
      return word.options().get(random.nextInt(word.options().size()));
    }
    if (kind instanceof Flag) {
      return random.nextBoolean();
    }
    if (kind instanceof WordList list) {
      return random.nextBoolean()
          ? List.of()
          : List.of(list.each().options().get(random.nextInt(list.each().options().size())));
    }
    if (kind instanceof WholeNumber whole) {
      return whole.least() + random.nextInt(Math.min(8, whole.most() - whole.least() + 1));
    }
    if (kind instanceof Amount amount) {
      double middle = amount.bare().toKept(amount.example());
      return Math.rint(middle * (0.8 + 0.4 * random.nextDouble()));
    }
    return name.equals("cracks") ? cracks(random) : null;
  }

  private static List<Crack> cracks(Random random) {
    List<Crack> cracks = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      cracks.add(
          new Crack(
              any(CrackPlace.values(), random),
              any(Side.values(), random),
              any(CrackStart.values(), random),
              any(CrackDepth.values(), random),
              random.nextBoolean(),
              random.nextBoolean()));
    }
    return cracks;
  }

  private static <E> E any(E[] all, Random random) {
    return all[random.nextInt(all.length)];
  }
}
