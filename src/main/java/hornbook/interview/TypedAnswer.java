package hornbook.interview;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.ShortText;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Nearest;
import hornbook.assessment.tree.Place;
import hornbook.assessment.word.Word;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads an answer as people type it: a number of the list, a word, a length with a fraction. */
final class TypedAnswer {
  /** What is allowed wherever something is not known. */
  private static final Place KEYBOARD = new Place("the answer", 1, 1);

  private static final List<String> YES = List.of("yes", "y", "true", "1");
  private static final List<String> NO = List.of("no", "n", "false", "2");

  private final Units units;
  private final LocalDate today;

  TypedAnswer(Units units, LocalDate today) {
    this.units = units;
    this.today = today;
  }

  /** What was read: a value, or why it is none. */
  record Result(Object value, AnswerOutcome.Refused refused) {
    static Result of(Object value) {
      return new Result(value, null);
    }

    static Result refused(String found, String allowed, String nearest) {
      return new Result(null, new AnswerOutcome.Refused('"' + found + '"', allowed, nearest));
    }
  }

  /** Reads a line that is not empty. */
  Result read(Kind kind, String line) {
    if (kind instanceof OneWord words) {
      return word(words.options(), line);
    }
    if (kind instanceof WordList list) {
      return words(list.each().options(), line);
    }
    if (kind instanceof Flag) {
      String said = line.toLowerCase(Locale.ROOT);
      if (YES.contains(said) || NO.contains(said)) {
        return Result.of(YES.contains(said));
      }
      return Result.refused(line, "yes or no", null);
    }
    if (kind instanceof Amount amount) {
      return scalar(amount, withUnit(amount, line), Token.TEXT, allowed(amount));
    }
    if (kind instanceof Day day) {
      String written = line.equalsIgnoreCase("today") ? today.toString() : line;
      return scalar(day, written, Token.TEXT, "today, or " + day.allowed());
    }
    ScalarKind one = (ScalarKind) kind;
    boolean number = line.matches("[+-]?[0-9]{1,9}(\\.[0-9]{1,9})?");
    String allowed = one.allowed().replace(", without quotes", "");
    return scalar(one, unquoted(line, kind), number ? Token.NUMBER : Token.TEXT, allowed);
  }

  /** Reads a list of words; {@code none} is the empty one. */
  Result words(List<? extends Word> options, String line) {
    if (line.equalsIgnoreCase("none") || line.equals("[]")) {
      return Result.of(List.of());
    }
    List<Word> all = new ArrayList<>();
    for (String part : line.replaceAll("[\\[\\]]", "").split("\\s*,\\s*|\\s+")) {
      Result one = word(options, part);
      if (one.refused() != null) {
        return one;
      }
      if (!all.contains((Word) one.value())) {
        all.add((Word) one.value());
      }
    }
    return Result.of(List.copyOf(all));
  }

  private static Result word(List<? extends Word> options, String line) {
    List<String> known = new ArrayList<>();
    String said = line.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    Word begins = null;
    int beginning = 0;
    for (int i = 0; i < options.size(); i++) {
      Word option = options.get(i);
      if (option.word().equals(said)
          || option.spelt(line)
          || said.equals(Integer.toString(i + 1))) {
        return Result.of(option);
      }
      if (option.word().startsWith(said)) {
        begins = option;
        beginning++;
      }
      known.add(option.word());
    }
    if (beginning == 1) {
      return Result.of(begins);
    }
    String numbers = "a number from 1 to " + options.size() + ", or the word";
    return Result.refused(line, numbers, Nearest.of(said, known));
  }

  private static Result scalar(ScalarKind kind, String text, Token token, String allowed) {
    ScalarKind.Taken taken = kind.take(new Scalar(KEYBOARD, "", text, token));
    if (taken instanceof ScalarKind.Taken.Refused refused) {
      return Result.refused(text, allowed, refused.nearest());
    }
    return Result.of(((ScalarKind.Taken.Value) taken).value());
  }

  /** A number by itself is in the units of the user. */
  private String withUnit(Amount amount, String line) {
    Quantity quantity = Quantity.parse(line);
    boolean bare = quantity != null && quantity.unit() == null;
    return bare ? line + " " + unit(amount).symbol() : line;
  }

  /** The unit of a number that stands without one. */
  Unit unit(Amount amount) {
    return units.bare(amount.bare());
  }

  private String allowed(Amount amount) {
    Unit unit = unit(amount);
    boolean whole = amount.dimension() != Dimension.LENGTH || units == Units.INCH;
    String least = range(amount.leastKept(), unit, whole);
    String most = range(amount.mostKept(), unit, whole);
    return amount.dimension().phrase() + " from " + least + " to " + most;
  }

  private static String range(double kept, Unit unit, boolean round) {
    double shown = unit.fromKept(kept);
    return round
        ? Quantity.write(unit.toKept(Math.rint(shown * 10) / 10), unit)
        : Quantity.write(kept, unit);
  }

  private static String unquoted(String line, Kind kind) {
    boolean quoted = line.length() > 1 && line.startsWith("\"") && line.endsWith("\"");
    return kind instanceof ShortText && quoted ? line.substring(1, line.length() - 1) : line;
  }

  /** Whether a line says that nothing was looked at. */
  static boolean nothing(String line) {
    return line.isEmpty() || line.equalsIgnoreCase(LocatedValue.UNKNOWN);
  }
}
