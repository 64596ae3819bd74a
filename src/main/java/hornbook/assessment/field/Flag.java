package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Nearest;
import java.util.List;

/** True or false, also written yes or no. */
public record Flag() implements ScalarKind {
  private static final List<String> YES = List.of("yes", "Yes", "YES", "y", "Y");
  private static final List<String> NO = List.of("no", "No", "NO", "n", "N");
  private static final List<String> KNOWN =
      List.of("true", "false", "yes", "no", LocatedValue.UNKNOWN);

  @Override
  public Class<?> type() {
    return Boolean.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    if (scalar.token() == Token.FLAG) {
      return new Taken.Value(scalar.text().equalsIgnoreCase("true"));
    }
    if (scalar.token() == Token.TEXT && YES.contains(scalar.text())) {
      return new Taken.Value(true);
    }
    if (scalar.token() == Token.TEXT && NO.contains(scalar.text())) {
      return new Taken.Value(false);
    }
    return new Taken.Refused(scalar.kind(), Nearest.of(scalar.text(), KNOWN));
  }

  @Override
  public String allowed() {
    return "true, false, yes, no";
  }

  @Override
  public String write(Object value) {
    return value.toString();
  }

  /** The words that stand for true and false, in every spelling. */
  public static List<String> words() {
    List<String> words = new java.util.ArrayList<>(YES);
    words.addAll(NO);
    return words;
  }
}
