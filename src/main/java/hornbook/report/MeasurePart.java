package hornbook.report;

import hornbook.advice.Closeness;
import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.assessment.FieldHolder;
import hornbook.assessment.Fields;
import hornbook.report.Bands.Band;
import hornbook.report.Section.Item;
import hornbook.report.Section.Kind;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The numbers of a foot against the limits they are held to. */
final class MeasurePart {
  /** Computed numbers that are not of this foot. */
  private static final Set<ReadingKind> ELSEWHERE =
      EnumSet.of(
          ReadingKind.BODY_WEIGHT,
          ReadingKind.AGE_DAYS,
          ReadingKind.OPPOSITE_LAMENESS,
          ReadingKind.OPPOSITE_LAME_DAYS);

  private static final Set<String> OF_THE_FOOT = ofTheFoot();

  private final Told told;
  private final Bands allBands;

  MeasurePart(Told told) {
    this.told = told;
    this.allBands = new Bands(told.book());
  }

  private static Set<String> ofTheFoot() {
    Set<String> names = new HashSet<>();
    FieldHolder measures = (FieldHolder) Fields.ofFoot("measures").kind();
    measures.fields().forEach(field -> names.add(field.name()));
    for (ReadingKind kind : ReadingKind.values()) {
      if (!ELSEWHERE.contains(kind)) {
        names.add(kind.id());
      }
    }
    return names;
  }

  /** A number with its bands, and how much it has to tell: the least first. */
  private record Row(Item item, int rank) {}

  List<Section> of(FootAdvice foot) {
    List<Row> rows = new ArrayList<>();
    for (MeasureGiven measure : foot.measures()) {
      if (OF_THE_FOOT.contains(measure.reading().what())) {
        rows.add(row(foot, measure));
      }
    }
    rows.sort(Comparator.comparing(Row::rank));
    return Section.unlessEmpty(
        Kind.MEASURES,
        "MEASURED (NEAR: within hand error, measure again)",
        rows.stream().map(Row::item).toList());
  }

  private Row row(FootAdvice foot, MeasureGiven measure) {
    Reading reading = measure.reading();
    List<Band> bands =
        allBands.of(reading.what(), foot.sheet().limits(), told.book(), told.phrases());
    boolean close =
        bands.stream().anyMatch(band -> Closeness.close(foot.sheet(), reading, band.limit()));
    boolean nothing = reading.exact() && reading.low() == 0;
    boolean told = nothing || measure.finding() != null;
    int rank = close ? 0 : bands.isEmpty() ? 3 : told ? 2 : 1;
    return new Row(Item.of(measure.label(), text(foot, measure, bands)), rank);
  }

  private String text(FootAdvice foot, MeasureGiven measure, List<Band> bands) {
    StringBuilder text = new StringBuilder(told.phrases().of(measure.reading()));
    for (Band band : told.detail() == Detail.FULL ? bands : nearest(measure.reading(), bands)) {
      boolean near = Closeness.close(foot.sheet(), measure.reading(), band.limit());
      boolean named = band.finding() != null && band.finding().equals(measure.finding());
      text.append(near ? ", NEAR " : named ? ", so " : "; ");
      text.append(band.name()).append(' ').append(band.bound());
    }
    return text.toString();
  }

  private static List<Band> nearest(Reading reading, List<Band> bands) {
    return bands.stream()
        .min(Comparator.comparing(band -> Math.abs(reading.low() - band.limit().value())))
        .map(List::of)
        .orElse(List.of());
  }
}
