package hornbook.report.words;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.List;

/** What stands in the fields of a file: {@code feet[0].measures.heelLength = 30 mm}. */
public final class RecordedText {
  private static final int MOST = 4;

  private final Amounts amounts;

  public RecordedText(Amounts amounts) {
    this.amounts = amounts;
  }

  private String line(FieldValue field) {
    return field.path() + " = " + value(field);
  }

  /**
   * Several fields on one line, those not looked at last; the first few where there are many.
   *
   * @param all whether to name them however many there are
   */
  public String line(List<FieldValue> fields, boolean all) {
    int shown = all ? fields.size() : Math.min(MOST, fields.size());
    List<String> known = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (FieldValue field : fields.subList(0, shown)) {
      if (field.value() == null) {
        unknown.add(field.path());
      } else {
        known.add(line(field));
      }
    }
    if (!unknown.isEmpty()) {
      known.add("not looked at: " + String.join(", ", unknown));
    }
    if (shown < fields.size()) {
      known.add("and " + (fields.size() - shown) + " more");
    }
    return String.join(", ", known);
  }

  /** What stands in a field that was looked at. */
  public String value(FieldValue field) {
    Object value = field.value();
    if (field.field().kind() instanceof Amount amount) {
      return amounts.text((Double) value, amount.dimension().kept().symbol());
    }
    if (value instanceof List<?> list) {
      return list(field, list);
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    return ((ScalarKind) field.field().kind()).write(value);
  }

  private static String list(FieldValue field, List<?> list) {
    if (list.isEmpty()) {
      return "none";
    }
    if (field.field().kind() instanceof FieldHolder) {
      String row = field.field().name().equals("wall") ? "stretch" : "row";
      String rows = field.field().name().equals("cracks") ? "crack" : row;
      return list.size()
          + " "
          + rows
          + (list.size() == 1 ? "" : rows.equals("stretch") ? "es" : "s");
    }
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(((Word) word).word()));
    return String.join(" and ", words);
  }
}
