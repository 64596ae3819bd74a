package hornbook.report.words;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Amounts that stand written in the texts of the rule base, put into the units of the reader. */
final class LiteralUnits {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?<![\\w.])(-?\\d+(?:\\.\\d+)?)(?: to (-?\\d+(?:\\.\\d+)?))? (mm|cm|kg|C)\\b");

  private final Amounts amounts;

  LiteralUnits(Amounts amounts) {
    this.amounts = amounts;
  }

  String in(String text) {
    if (!hasDigit(text)) {
      return text;
    }
    Matcher amount = AMOUNT.matcher(text);
    StringBuilder put = new StringBuilder();
    while (amount.find()) {
      amount.appendReplacement(put, Matcher.quoteReplacement(said(amount)));
    }
    amount.appendTail(put);
    return put.toString().replace(" %", "%");
  }

  private static boolean hasDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  private String said(Matcher amount) {
    double from = Double.parseDouble(amount.group(1));
    String unit = amount.group(3);
    int finer = amount.group().contains(".") ? 0 : -1;
    return amount.group(2) == null
        ? amounts.text(from, unit, finer)
        : amounts.span(from, Double.parseDouble(amount.group(2)), unit, finer);
  }
}
