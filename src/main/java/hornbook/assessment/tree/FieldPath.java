package hornbook.assessment.tree;

import hornbook.assessment.Limb;
import java.util.ArrayList;
import java.util.List;

/** A path to a field: {@code feet[0].signs.digitalPulse}, {@code feet[left-fore].wall[1].to}. */
public record FieldPath(List<Step> steps) {
  /** One step of a path. */
  public sealed interface Step {}

  /** Into a group. */
  public record Name(String key) implements Step {}

  /** To a row of a list, counted from 0. */
  public record Index(int number) implements Step {}

  /** To the row of a foot. */
  public record OfLimb(Limb limb) implements Step {}

  /** Reads a path; null when the text is none. */
  public static FieldPath parse(String text) {
    List<Step> steps = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      if (text.charAt(at) == '[') {
        int close = text.indexOf(']', at);
        Step row = close < 0 || steps.isEmpty() ? null : row(text.substring(at + 1, close));
        if (row == null) {
          return null;
        }
        steps.add(row);
        at = close + 1;
      } else {
        if (!steps.isEmpty()) {
          if (text.charAt(at) != '.') {
            return null;
          }
          at++;
        }
        int end = at;
        while (end < text.length() && text.charAt(end) != '.' && text.charAt(end) != '[') {
          end++;
        }
        if (end == at) {
          return null;
        }
        steps.add(new Name(text.substring(at, end)));
        at = end;
      }
    }
    return steps.isEmpty() ? null : new FieldPath(List.copyOf(steps));
  }

  private static Step row(String text) {
    if (!text.isEmpty() && text.length() <= 4 && text.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return new Index(Integer.parseInt(text));
    }
    for (Limb limb : Limb.values()) {
      if (limb.spelt(text)) {
        return new OfLimb(limb);
      }
    }
    return null;
  }
}
