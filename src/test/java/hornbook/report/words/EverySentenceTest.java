package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rules.Shipped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Every sentence that the program takes from its data: rules, findings, limits, job sheets, words
 * explained, names of fields and how to look. Each is in words of today, one name for one thing.
 */
class EverySentenceTest {
  /** The most words from one full stop to the next. */
  private static final int MOST_WORDS = 40;

  private static final Pattern HOLE = Pattern.compile("\\{[^}]*\\}");

  private static final Pattern STOP = Pattern.compile("[.?!](?=\\s|$)");

  /** Turns that nobody uses in a yard today, and second names for what has a name already. */
  private static final Pattern BANNED =
      Pattern.compile(
          "\\b(hairline|foot axis|living tissue|parted|ditch|images?|speaks? (for|against)"
              + "|held against|reckoned|reckons|tells of|is told|goes on with|holds to"
              + "|lies bare|looked over|as near as|the vet's case|were it so|hangs on|bears on"
              + "|angle less|wants (a|an|its|the|some|sound|lowering)\\b|owned to)\\b",
          Pattern.CASE_INSENSITIVE);

  @Test
  void isShortAndInWordsOfToday() {
    Map<String, String> all = sentences();
    assertThat(all).hasSizeGreaterThan(1000);
    List<String> faults = new ArrayList<>();
    all.forEach(
        (where, text) -> {
          BANNED.matcher(text).results().forEach(one -> faults.add(where + ": " + one.group()));
          for (String sentence : STOP.split(text)) {
            int words = sentence.trim().split("\\s+").length;
            if (words > MOST_WORDS) {
              faults.add(where + ": " + words + " words: " + sentence);
            }
          }
        });
    assertThat(faults).isEmpty();
  }

  private static Map<String, String> sentences() {
    Rulebook book = Shipped.BOOK;
    Map<String, String> all = new TreeMap<>();
    for (RuleEntry rule : book.rules().values()) {
      put(all, rule.id() + " title", rule.title());
      put(all, rule.id() + " says", rule.text().says());
      put(all, rule.id() + " meanwhile", rule.text().meanwhile());
    }
    book.findings().values().forEach(one -> put(all, "finding " + one.id(), one.label()));
    book.limits().forEach(one -> put(all, "limit " + one.id(), one.label()));
    book.instructions().values().forEach(one -> put(all, "sheet " + one.id(), one.says()));
    book.techniques().forEach(one -> put(all, "technique " + one.id(), one.label()));
    book.supports().forEach(one -> put(all, "support " + one.id(), one.label()));
    book.topics().forEach(one -> put(all, "topic " + one.title(), one.title()));
    book.glossary().forEach(one -> put(all, "glossary " + one.word(), one.says()));
    for (ReadingKind kind : ReadingKind.values()) {
      put(all, "reading " + kind.id(), kind.label());
    }
    fields(Fields.ASSESSMENT, "", all);
    return all;
  }

  private static void fields(FieldHolder holder, String path, Map<String, String> all) {
    for (Field field : holder.fields()) {
      String here = path + "/" + field.name();
      put(all, "label" + here, field.label());
      put(all, "how" + here, field.how());
      if (field.kind() instanceof FieldHolder inner) {
        fields(inner, here, all);
      }
    }
  }

  private static void put(Map<String, String> all, String where, String text) {
    if (text != null) {
      all.put(where, HOLE.matcher(text).replaceAll("1"));
    }
  }
}
