package hornbook.assessment;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.FormatName;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.tree.FileText;
import hornbook.assessment.tree.LocatedValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Any assessment the format allows, made from the table of fields. */
public final class AnyAssessment {
  private AnyAssessment() {}

  /** Without contradictions: every one of these passes the reader. */
  public static Arbitrary<Assessment> valid() {
    return record(Fields.ASSESSMENT).map(any -> consistent((Assessment) any));
  }

  private static Arbitrary<Object> record(FieldHolder holder) {
    List<Arbitrary<Object>> fields = new ArrayList<>();
    for (Field field : holder.fields()) {
      Arbitrary<Object> value = value(field.kind());
      boolean always = field.required() || field.kind() instanceof FieldGroup;
      fields.add(always ? value : value.injectNull(0.4));
    }
    return Combinators.combine(fields).as(values -> holder.shape().build(values.toArray()));
  }

  private static Arbitrary<Object> value(Kind kind) {
    if (kind instanceof FieldGroup group) {
      return record(group);
    }
    if (kind instanceof FieldRows rows) {
      int least = rows.emptyIsNone() ? 0 : 1;
      return record(rows).list().ofMinSize(least).ofMaxSize(Math.min(4, rows.most())).asGeneric();
    }
    if (kind instanceof WordList list) {
      return Arbitraries.of(list.each().options()).list().uniqueElements().ofMaxSize(4).asGeneric();
    }
    if (kind instanceof OneWord word) {
      return Arbitraries.of(word.options()).asGeneric();
    }
    if (kind instanceof Flag) {
      return Arbitraries.of(true, false).asGeneric();
    }
    if (kind instanceof WholeNumber whole) {
      return Arbitraries.integers().between(whole.least(), whole.most()).asGeneric();
    }
    if (kind instanceof Amount amount) {
      return Arbitraries.doubles()
          .between(amount.leastKept(), amount.mostKept())
          .ofScale(2)
          .asGeneric();
    }
    if (kind instanceof Day) {
      return Arbitraries.longs()
          .between(LocalDate.of(1900, 1, 1).toEpochDay(), LocalDate.of(2199, 12, 31).toEpochDay())
          .map(LocalDate::ofEpochDay)
          .asGeneric();
    }
    if (kind instanceof FormatName format) {
      return Arbitraries.just(format.name()).asGeneric();
    }
    return Arbitraries.strings()
        .all()
        .ofMaxLength(20)
        .map(AnyAssessment::line)
        .filter(text -> !text.isEmpty() && !text.equals(LocatedValue.UNKNOWN))
        .asGeneric();
  }

  private static String line(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints().filter(FileText::printable).forEach(line::appendCodePoint);
    return line.toString().strip();
  }

  private static Assessment consistent(Assessment any) {
    AssessmentEdit days = AssessmentEdit.of("horse.ageDays");
    Assessment made = any.horse().ageYears() == null ? any : days.with(any, null);
    Set<Limb> seen = new HashSet<>();
    List<Foot> feet = new ArrayList<>();
    for (Foot foot : made.feet()) {
      if (seen.add(foot.limb())) {
        feet.add(foot);
      }
    }
    made = AssessmentEdit.of("feet").with(made, feet);
    for (int i = 0; i < feet.size(); i++) {
      String path = "feet[" + i + "].";
      Measures measures = feet.get(i).measures();
      if (measures.bearingLength() != null) {
        made = AssessmentEdit.of(path + "measures.toeToWidest").with(made, null);
      }
      made = AssessmentEdit.of(path + "wall").with(made, wall(feet.get(i)));
      if (made.visit().vet() == VetRole.NONE) {
        made = AssessmentEdit.of(path + "diagnosis").with(made, null);
        made = AssessmentEdit.of(path + "care.vetJudged").with(made, null);
      }
    }
    return made;
  }

  /** The stretches laid end to end on either side, short enough for any edge. */
  private static List<WallStretch> wall(Foot foot) {
    if (foot.wall() == null) {
      return null;
    }
    List<WallStretch> wall = new ArrayList<>();
    double[] end = new double[Side.values().length];
    for (WallStretch any : foot.wall()) {
      int side = any.side() == null ? 0 : any.side().ordinal();
      Double from = any.from() == null ? null : end[side];
      Double to = any.to() == null ? null : end[side] + 1 + any.to() / 100;
      wall.add(
          new WallStretch(
              any.side(),
              from,
              to,
              any.state(),
              any.height(),
              any.thickness(),
              any.flare(),
              any.moist(),
              any.damp(),
              any.mealy()));
      end[side] += 7.5;
    }
    return wall;
  }
}
