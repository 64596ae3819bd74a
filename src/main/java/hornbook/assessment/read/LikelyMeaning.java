package hornbook.assessment.read;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.tree.LocatedValue.Scalar;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a value that is refused was most likely meant to be, written as it is read. */
final class LikelyMeaning {
  private static final Pattern DAY_FIRST =
      Pattern.compile("([0-9]{1,2})[./ -]([0-9]{1,2})[./ -]((19|20|21)[0-9]{2})");
  private static final Pattern OUT_OF = Pattern.compile("([0-9]+) ?(/|of|out of) ?[0-9]+");
  private static final Pattern THOUSANDS = Pattern.compile("([0-9]{1,3}),([0-9]{3})( ?[a-zA-Z]*)");
  private static final Pattern DEGREES =
      Pattern.compile("(-?[0-9.]+) ?(deg|degrees?|\u00b0|\u00ba)");
  private static final List<String> HEEL = List.of("heel", "heels", "buttress", "end");
  private static final int MONTHS = 12;

  private LikelyMeaning() {}

  /** The text to write, or null where nobody can tell. */
  static String of(Field field, Scalar scalar) {
    String text = scalar.text().strip();
    if (field.kind() instanceof Day) {
      return day(text);
    }
    if (field.kind() instanceof WholeNumber) {
      return number(text);
    }
    return field.kind() instanceof Amount amount ? amount(amount, field.name(), text) : null;
  }

  private static String day(String text) {
    Matcher written = DAY_FIRST.matcher(text);
    if (!written.matches()) {
      return null;
    }
    int first = Integer.parseInt(written.group(1));
    int second = Integer.parseInt(written.group(2));
    String dayFirst = day(written.group(3), second, first);
    String monthFirst = day(written.group(3), first, second);
    if (second > MONTHS || first == second) {
      return monthFirst;
    }
    return first > MONTHS ? dayFirst : dayFirst + " or " + monthFirst;
  }

  private static String day(String year, int month, int day) {
    return year + (month < 10 ? "-0" : "-") + month + (day < 10 ? "-0" : "-") + day;
  }

  private static String number(String text) {
    Matcher written = OUT_OF.matcher(text);
    return written.matches() ? written.group(1) : null;
  }

  private static String amount(Amount amount, String name, String text) {
    Matcher thousands = THOUSANDS.matcher(text);
    if (thousands.matches()) {
      String rest = thousands.group(3);
      return thousands.group(1) + thousands.group(2) + rest;
    }
    Matcher degrees = DEGREES.matcher(text);
    if (amount.dimension() == Dimension.TEMPERATURE && degrees.matches()) {
      return degrees.group(1) + " C or " + degrees.group(1) + " F";
    }
    if (name.equals("to") && HEEL.contains(text)) {
      return "the length of this side from mid-toe to the heel, by tape along the edge, as 150 mm";
    }
    return name.equals("from") && text.equals("toe") ? "0 mm" : null;
  }
}
