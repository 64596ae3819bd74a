package hornbook.report.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What a sentence that somebody reads may not be: too long, or in words nobody uses today. */
final class Wording {
  /** The most words from one full stop to the next in what is read first, or at the horse. */
  private static final int MOST_WORDS = 25;

  /** The same elsewhere: reasons, stories, labels that list grades, exit codes in the help. */
  private static final int MOST_WORDS_BESIDE = 38;

  private static final Pattern READ_FIRST =
      Pattern.compile(
          "^sheet |^[A-Z]\\d{3} (title|says|meanwhile)$|^change | differs |^schema|\\.md \\d+$");

  private static final Pattern HOLE = Pattern.compile("\\{[^}]*\\}");

  private static final Pattern STOP = Pattern.compile("[.?!](?=\\s|$)");

  /** Turns that nobody uses in a yard today, and second names for what has a name already. */
  private static final Pattern BANNED =
      Pattern.compile(
          "\\b(hairline|foot axis|living tissue|parted|parting|ditch|images?|imaged"
              + "|speaks? (for|against|of)|spoke (for|against)|held against|reckon(s|ed|ing)?"
              + "|tells? of|(is|are|was|were) told|go(es)? on with|going on with|gone on with"
              + "|holds to|lies bare|look(ed|ing)? over|as near as"
              + "|the vet's case|were it so|hangs? on|bears? on|bearing on"
              + "|(angle|length|height|depth) less|for want of"
              + "|wants (its|some|sound|lowering|more|support|another|soft|cleaning)|lest|upon"
              + "|owned (up )?to|(is|are) to(?= [a-z])|never taken for no|give leave|silent where)\\b",
          Pattern.CASE_INSENSITIVE);

  private Wording() {}

  /** Every fault of texts by where they stand. */
  static List<String> faults(Map<String, String> all) {
    List<String> faults = new ArrayList<>();
    all.forEach(
        (where, text) -> {
          String filled = HOLE.matcher(text).replaceAll("1");
          BANNED.matcher(filled).results().forEach(one -> faults.add(where + ": " + one.group()));
          int most = READ_FIRST.matcher(where).find() ? MOST_WORDS : MOST_WORDS_BESIDE;
          for (String sentence : STOP.split(filled)) {
            int words = sentence.trim().split("\\s+").length;
            if (words > most) {
              faults.add(where + ": " + words + " words: " + sentence);
            }
          }
        });
    return faults;
  }
}
