package hornbook.interview;

import hornbook.advice.fact.AskedWhere;
import hornbook.assessment.Assessment;
import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.word.CrackDepth;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackRuns;
import hornbook.assessment.word.CrackStart;
import hornbook.foot.FootLimits;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.stream.Collectors;

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
    byte[] file = ("# all on a line\n" + line(assessment)).getBytes(StandardCharsets.UTF_8);
    return AssessmentReader.read(file, "", List.of()) instanceof ReadResult.Good;
  }

  /** As short a file as holds all that is known: it is read thousands of times. */
  private static String line(Assessment assessment) {
    return members(Fields.ASSESSMENT, assessment);
  }

  private static String members(FieldHolder holder, Object record) {
    StringJoiner members = new StringJoiner(", ", "{", "}");
    Object[] values = holder.shape().take(record);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null) {
        Field field = holder.fields().get(i);
        members.add(field.name() + ": " + line(field.kind(), values[i]));
      }
    }
    return members.toString();
  }

  private static String line(Kind kind, Object value) {
    if (kind instanceof FieldGroup group) {
      return members(group, value);
    }
    if (kind instanceof FieldRows rows) {
      return items(value, row -> members(rows, row));
    }
    if (kind instanceof WordList words) {
      return items(value, words.each()::write);
    }
    return kind instanceof Amount amount ? amount.write(value) : ((ScalarKind) kind).write(value);
  }

  private static String items(Object list, Function<Object, String> each) {
    return ((List<?>) list).stream().map(each).collect(Collectors.joining(", ", "[", "]"));
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
    return asAsked(made);
  }

  /** Without what an interview would not ask for on such feet. */
  private static Assessment asAsked(Assessment made) {
    Assessment asked = made;
    for (FieldValue field : Fields.values(made).toList()) {
      String name = field.field().name();
      boolean ever = false;
      for (int foot = 0; foot < made.feet().size(); foot++) {
        boolean ofThis =
            !field.path().startsWith("feet[") || field.path().startsWith("feet[" + foot + "].");
        Set<String> pointless = pointless(made, foot);
        ever |= ofThis && !pointless.contains(name);
      }
      if (!ever && field.value() != null) {
        asked = AssessmentEdit.of(field.path()).with(asked, null);
      }
    }
    return asked;
  }

  private static Set<String> pointless(Assessment made, int foot) {
    FootLimits limits = Shipped.ADVISOR.sheet(made, foot).computing();
    return AskedWhere.pointless(made.horse(), made.feet().get(foot), limits);
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

  private static List<WallCrack> cracks(Random random) {
    List<WallCrack> cracks = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      cracks.add(
          new WallCrack(
              any(CrackPlace.values(), random),
              any(Side.values(), random),
              any(CrackStart.values(), random),
              any(CrackDepth.values(), random),
              random.nextBoolean(),
              random.nextBoolean(),
              random.nextBoolean(),
              any(CrackRuns.values(), random)));
    }
    return cracks;
  }

  private static <E> E any(E[] all, Random random) {
    return all[random.nextInt(all.length)];
  }
}
