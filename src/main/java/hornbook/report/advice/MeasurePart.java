package hornbook.report.advice;

import hornbook.advice.Closeness;
import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.report.advice.LimitBands.Band;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.usual.DecidingMeasures;
import hornbook.report.usual.DecidingMeasures.Deciding;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import hornbook.report.words.Phrases;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Limit;
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

  private final PageContext told;
  private final LimitBands allBands;

  MeasurePart(PageContext told) {
    this.told = told;
    this.allBands = new LimitBands(told.book());
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
    if (told.detail() == Detail.USUAL) {
      List<Item> items =
          DecidingMeasures.of(foot).stream().map(one -> deciding(foot, one)).toList();
      return Section.unlessEmpty(Kind.MEASURES, "MEASUREMENTS THAT DECIDED", items);
    }
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

  private List<Band> bands(FootAdvice foot, MeasureGiven measure) {
    return allBands.of(
        measure.reading().what(), foot.sheet().limits(), told.book(), told.phrases());
  }

  private Row row(FootAdvice foot, MeasureGiven measure) {
    Reading reading = measure.reading();
    List<Band> bands = bands(foot, measure);
    boolean named = bands.stream().anyMatch(band -> band.finding() != null);
    boolean near =
        bands.stream().anyMatch(band -> Closeness.close(foot.sheet(), reading, band.limit()));
    boolean nothing = reading.exact() && reading.low() == 0;
    int rank;
    if (near && named) {
      rank = 0;
    } else if (bands.isEmpty()) {
      rank = 4;
    } else if (measure.finding() != null || nothing) {
      rank = 3;
    } else {
      rank = named ? 1 : 2;
    }
    return new Row(item(foot, measure, bands), rank);
  }

  /** The number beside the limit that decided. */
  private Item deciding(FootAdvice foot, Deciding one) {
    Reading reading = one.measure().reading();
    Limit limit = one.limit();
    if (limit == null) {
      return Item.of(one.measure().label(), told.phrases().of(reading));
    }
    String near = Closeness.close(foot.sheet(), reading, limit) ? ", near the limit" : "";
    return Item.of(
        one.measure().label(),
        "%s%s; %s: %s"
            .formatted(
                told.phrases().apart(reading, limit),
                near,
                limit.label(),
                told.phrases().groundedLimit(limit)));
  }

  /** In full every band stands on a line of its own, else the nearest beside the number. */
  private Item item(FootAdvice foot, MeasureGiven measure, List<Band> bands) {
    Reading reading = measure.reading();
    String value = told.phrases().of(reading);
    if (told.detail() == Detail.FULL) {
      String tag = Phrases.tag(LimitProvenance.of(reading.what(), foot.sheet().limits()));
      value = (value + " " + tag).strip();
      List<String> notes = bands.stream().map(band -> against(foot, measure, band)).toList();
      return new Item(measure.label(), value, notes, null);
    }
    List<Band> nearest = nearest(reading, bands);
    return nearest.isEmpty()
        ? Item.of(measure.label(), value)
        : Item.of(measure.label(), value + "; " + against(foot, measure, nearest.get(0)));
  }

  private static String against(FootAdvice foot, MeasureGiven measure, Band band) {
    boolean near = Closeness.close(foot.sheet(), measure.reading(), band.limit());
    boolean named = band.finding() != null && band.finding().equals(measure.finding());
    String bound = (band.finding() == null ? ": " : " ") + band.bound();
    return (near ? "NEAR " : named ? "found: " : "") + band.name() + bound;
  }

  private static List<Band> nearest(Reading reading, List<Band> bands) {
    return bands.stream()
        .min(Comparator.comparing(band -> Math.abs(reading.low() - band.limit().value())))
        .map(List::of)
        .orElse(List.of());
  }
}
