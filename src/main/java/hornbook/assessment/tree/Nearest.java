package hornbook.assessment.tree;

import java.util.List;
import java.util.Locale;

/** The nearest known word to one that is not known. */
public final class Nearest {
  private static final int LONGEST = 60;

  private Nearest() {}

  /**
   * The word within a slip or two of the text, the first of several as near; else the first that
   * begins with it, or the only one that has it for one of its parts, as {@code wrap} is of {@code
   * cast-wrap}; null with none.
   */
  public static String of(String text, List<String> words) {
    if (text.length() > LONGEST) {
      return null;
    }
    String sought = plain(text);
    String nearest = null;
    int least = Math.max(1, Math.min(3, sought.length() / 3)) + 1;
    for (String word : words) {
      int distance = distance(sought, plain(word));
      if (distance < least) {
        least = distance;
        nearest = word;
      }
    }
    return nearest == null ? byPart(text.toLowerCase(Locale.ROOT), words) : nearest;
  }

  private static String byPart(String part, List<String> words) {
    List<String> having =
        words.stream().filter(word -> List.of(word.split("-")).contains(part)).toList();
    return having.stream()
        .filter(word -> word.startsWith(part))
        .findFirst()
        .orElse(having.size() == 1 ? having.get(0) : null);
  }

  /** Without capitals, hyphens, underscores and spaces. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
      if (c != '-' && c != '_' && c != ' ') {
        plain.append(c);
      }
    }
    return plain.toString();
  }

  /** Letters added, left out, changed, or swapped with their neighbour (Damerau, 1964). */
  static int distance(String a, String b) {
    int[][] row = new int[3][b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = row[i % 3];
      int[] before = row[(i + 2) % 3];
      int[] beforeThat = row[(i + 1) % 3];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(change, Math.min(before[j], now[j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          now[j] = Math.min(now[j], beforeThat[j - 2] + 1);
        }
      }
    }
    return row[a.length() % 3][b.length()];
  }
}
