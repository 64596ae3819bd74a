package hornbook.report.classroom;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.quantity.Units;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RecordedText;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Everything that was seen and measured in a case, in short facts, part by part. */
final class CaseFacts {
  private final RecordedText noted;

  CaseFacts(Units units) {
    this.noted = new RecordedText(new Amounts(units));
  }

  /** The facts by the part they belong to: the horse and the visit first, then foot by foot. */
  Map<String, List<String>> of(Assessment assessment) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    put("Horse and visit", ofHorse(assessment), parts);
    for (int at = 0; at < assessment.feet().size(); at++) {
      Foot foot = assessment.feet().get(at);
      String name = Sentence.capital(FieldNames.of(foot.limb()));
      List<FieldValue> values = Fields.values(foot, at).toList();
      put(name + ": measured", values.stream().filter(one -> in(one, ".measures.")), parts);
      put(name + ": seen", values.stream().filter(CaseFacts::seen), parts);
      put(name + ": the ground edge", rows(values, ".wall["), parts);
      put(name + ": cracks", rows(values, ".cracks["), parts);
    }
    List<FieldValue> kit = known(assessment).filter(one -> one.path().startsWith("kit.")).toList();
    List<String> van = new ArrayList<>();
    kit.stream().filter(one -> !inRow(one)).forEach(one -> van.add(fact(one)));
    rows(kit, ".shoeSizes[").forEach(row -> van.add("shoe " + row));
    put("In the van", van, parts);
    return parts;
  }

  /** What one field holds: {@code toe angle 51°}; what was not looked at says so. */
  String fact(FieldValue field) {
    String label = FieldNames.of(field.path());
    if (field.value() == null) {
      return label + ": not looked at";
    }
    if (field.field().kind() instanceof FieldRows && field.value() instanceof List<?> list) {
      return label + ": " + (list.isEmpty() ? "none" : noted.value(field));
    }
    return label + ": " + spoken(noted.value(field));
  }

  private static String spoken(String value) {
    boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
    String bare = quoted ? value.substring(1, value.length() - 1) : value;
    return bare.matches("[a-z -]+") ? PlainWords.of(bare) : bare;
  }

  /** Some fields, a line each; the rows of wall and cracks a line each as well. */
  List<String> lines(List<FieldValue> fields) {
    List<String> lines = new ArrayList<>();
    List<FieldValue> single = fields.stream().filter(one -> !inRow(one)).toList();
    single.forEach(one -> lines.add(fact(one)));
    for (String list : List.of("wall", "cracks", "shoeSizes")) {
      for (String row : rows(fields, "." + list + "[")) {
        lines.add(
            (list.equals("cracks") ? "crack" : list.equals("wall") ? list : "shoe") + ": " + row);
      }
    }
    return lines;
  }

  private static boolean inRow(FieldValue field) {
    return field.path().replaceFirst("^feet\\[\\d+]", "").contains("[");
  }

  private static Stream<FieldValue> known(Assessment assessment) {
    return Fields.values(assessment).filter(one -> one.value() != null).filter(one -> !listed(one));
  }

  /** A list of rows that has rows is told by them. */
  private static boolean listed(FieldValue field) {
    return field.field().kind() instanceof FieldRows
        && field.value() instanceof List<?> list
        && !list.isEmpty();
  }

  private static Stream<FieldValue> ofHorse(Assessment assessment) {
    return known(assessment)
        .filter(one -> one.path().startsWith("horse.") || one.path().startsWith("visit."));
  }

  private static boolean in(FieldValue field, String group) {
    return field.value() != null && field.path().contains(group);
  }

  private static boolean seen(FieldValue field) {
    boolean elsewhere =
        field.path().contains(".measures.")
            || field.path().contains(".wall[")
            || field.path().contains(".cracks[")
            || field.path().endsWith(".limb");
    return field.value() != null && !elsewhere && !listed(field);
  }

  private void put(String part, Stream<FieldValue> fields, Map<String, List<String>> parts) {
    List<String> facts = new ArrayList<>();
    List<String> no = new ArrayList<>();
    for (FieldValue field : fields.toList()) {
      if (Boolean.FALSE.equals(field.value())) {
        no.add(FieldNames.of(field.path()));
      } else {
        facts.add(fact(field));
      }
    }
    if (!no.isEmpty()) {
      facts.add("looked for and not there: " + String.join(", ", no));
    }
    if (!facts.isEmpty()) {
      parts.put(part, facts);
    }
  }

  private void put(String part, List<String> rows, Map<String, List<String>> parts) {
    if (!rows.isEmpty()) {
      parts.put(part, rows);
    }
  }

  /** One line for each row: {@code outer, from 20 mm to 68 mm, broken away, 26 mm high, dry}. */
  private List<String> rows(List<FieldValue> values, String of) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (FieldValue field : values) {
      if (in(field, of)) {
        String row = field.path().substring(0, field.path().lastIndexOf('.'));
        rows.computeIfAbsent(row, key -> new ArrayList<>()).add(part(field));
      }
    }
    return rows.values().stream()
        .map(row -> String.join(", ", row).replaceAll(", (from|to) ", " $1 "))
        .toList();
  }

  private String part(FieldValue field) {
    String value = noted.value(field);
    return switch (field.field().name()) {
      case "side", "state" -> PlainWords.of(value);
      case "from", "to" -> field.field().name() + " " + value;
      case "label" -> "size " + spoken(value);
      case "width" -> value;
      case "moist" -> value.equals("yes") ? "stays damp or weeps" : "does not weep";
      default -> field.field().label() + " " + PlainWords.of(value);
    };
  }
}
