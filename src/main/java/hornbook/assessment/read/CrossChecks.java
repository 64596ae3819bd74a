package hornbook.assessment.read;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.Judged;
import hornbook.assessment.Limb;
import hornbook.assessment.Measures;
import hornbook.assessment.VetRole;
import hornbook.assessment.Visit;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.word.Diagnosis;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What no field shows by itself: two that cannot both be so. Unknown contradicts nothing. */
public final class CrossChecks {
  private static final int DAYS_IN_YEAR = 365;
  private static final int DAYS_IN_LEAP_YEAR = 366;

  private final List<Contradiction> found = new ArrayList<>();

  private CrossChecks() {}

  /** What the field at a path holds, and what it may hold beside the others. */
  public record Contradiction(String path, String found, String allowed) {}

  /** Whether all that is known of this horse can be so together. */
  public static boolean hold(Assessment assessment) {
    return in(assessment).isEmpty();
  }

  /**
   * What no file could hold of this record, made by other means than reading: a value out of its
   * bounds, too many rows, two fields that cannot both be so.
   */
  public static Optional<Contradiction> first(Assessment assessment) {
    return Stream.concat(
            Fields.values(assessment)
                .filter(one -> one.value() != null && !one.field().kind().holds(one.value()))
                .map(CrossChecks::outOfBounds),
            in(assessment).stream())
        .findFirst();
  }

  private static Contradiction outOfBounds(FieldValue one) {
    String found =
        one.field().kind() instanceof ScalarKind scalar
            ? scalar.write(one.value())
            : "a list of " + ((List<?>) one.value()).size();
    return new Contradiction(one.path(), found, one.field().kind().allowed());
  }

  static void of(Assessment assessment, LocatedValue tree, List<Fault> faults) {
    for (Contradiction one : in(assessment)) {
      LocatedValue value = tree.at(FieldPath.parse(one.path));
      faults.add(Fault.at(value.place(), one.path, one.found, one.allowed));
    }
  }

  private static List<Contradiction> in(Assessment assessment) {
    CrossChecks checks = new CrossChecks();
    checks.all(assessment);
    return checks.found;
  }

  private void all(Assessment assessment) {
    age(assessment.horse());
    if (assessment.feet() == null) {
      return;
    }
    Set<Limb> seen = EnumSet.noneOf(Limb.class);
    for (int i = 0; i < assessment.feet().size(); i++) {
      Foot foot = assessment.feet().get(i);
      String path = "feet[" + i + "]";
      if (foot.limb() != null && !seen.add(foot.limb())) {
        fault(path + ".limb", "a second " + foot.limb().word(), "each foot once");
      }
      widest(foot.measures(), path);
      wall(foot, path);
      diagnosis(foot, assessment.visit(), path);
      judged(foot, assessment.visit(), path);
    }
  }

  /** A horse may be called a year older than it is: many are counted from the first of the year. */
  private void age(Horse horse) {
    if (horse.ageDays() == null || horse.ageYears() == null) {
      return;
    }
    int days = horse.ageDays();
    int years = horse.ageYears();
    boolean tooYoung = days < (years - 1) * DAYS_IN_YEAR;
    boolean tooOld = days >= (years + 1) * DAYS_IN_LEAP_YEAR;
    if (tooYoung || tooOld) {
      fault("horse.ageDays", days + " days beside " + years + " years", "one age, given once");
    }
  }

  private void widest(Measures measures, String path) {
    Double widest = measures.toeToWidest();
    Double bearing = measures.bearingLength();
    if (widest != null && bearing != null && widest > bearing) {
      fault(
          path + ".measures.toeToWidest", mm(widest), "at most the bearing length, " + mm(bearing));
    }
  }

  /** What a vet has found, a vet has been told of. */
  private void diagnosis(Foot foot, Visit visit, String path) {
    Diagnosis named = foot.diagnosis();
    if (named != null && named != Diagnosis.NONE && visit.vet() == VetRole.NONE) {
      fault(
          path + ".diagnosis",
          named.word() + " beside visit.vet: none",
          "none, or visit.vet: informed or directing");
    }
  }

  /** What a vet has judged, a vet has been told of. */
  private void judged(Foot foot, Visit visit, String path) {
    List<Judged> judged = foot.care() == null ? null : foot.care().vetJudged();
    if (judged != null && !judged.isEmpty() && visit.vet() == VetRole.NONE) {
      fault(
          path + ".care.vetJudged",
          judged.get(0).word() + " beside visit.vet: none",
          "[], or visit.vet: informed or directing");
    }
  }

  private void wall(Foot foot, String path) {
    if (foot.wall() == null) {
      return;
    }
    Double longest = longestEdge(foot.measures());
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < foot.wall().size(); i++) {
      Row row = new Row(foot.wall().get(i), path + ".wall[" + i + "]");
      if (longest != null) {
        row.refusePast(longest, this);
      }
      if (row.backwards()) {
        String allowed = "more than where the stretch begins, " + mm(row.stretch.from());
        fault(row.path + ".to", mm(row.stretch.to()), allowed);
      } else if (row.complete()) {
        rows.add(row);
      }
    }
    rows.sort(null);
    Row furthest = null;
    for (Row row : rows) {
      boolean sameSide = furthest != null && furthest.stretch.side() == row.stretch.side();
      if (sameSide && row.from() < furthest.stretch.to()) {
        String found = mm(row.from()) + ", inside " + furthest.path;
        fault(row.path + ".from", found, mm(furthest.stretch.to()) + " or more");
      }
      if (!sameSide || row.stretch.to() > furthest.stretch.to()) {
        furthest = row;
      }
    }
  }

  /**
   * No edge of one side is longer than the foot is long and wide together; a tenth more for the
   * hand that measured. Null when either was not measured.
   */
  private static Double longestEdge(Measures measures) {
    Double length = measures.bearingLength();
    Double width = measures.width();
    return length == null || width == null ? null : 1.1 * (length + width);
  }

  private void fault(String path, String found, String allowed) {
    this.found.add(new Contradiction(path, found, allowed));
  }

  private static String mm(double length) {
    return Quantity.write(Math.rint(length * 10) / 10, Unit.MM);
  }

  private record Row(WallStretch stretch, String path) implements Comparable<Row> {
    @Override
    public int compareTo(Row other) {
      int side = stretch.side().compareTo(other.stretch.side());
      return side != 0 ? side : Double.compare(from(), other.from());
    }

    double from() {
      return stretch.from();
    }

    boolean complete() {
      return stretch.side() != null && stretch.from() != null && stretch.to() != null;
    }

    boolean backwards() {
      return stretch.from() != null && stretch.to() != null && stretch.to() <= stretch.from();
    }

    void refusePast(double longest, CrossChecks checks) {
      refusePast(longest, stretch.from(), ".from", checks);
      refusePast(longest, stretch.to(), ".to", checks);
    }

    private void refusePast(double longest, Double end, String field, CrossChecks checks) {
      if (end != null && end > longest) {
        String allowed = "at most " + mm(longest) + " for a foot of this length and width";
        checks.fault(path + field, mm(end), allowed);
      }
    }
  }
}
