package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rules.Shipped;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every sentence the program can print: what it takes from its data (rules, findings, limits, job
 * sheets, words explained, names of fields and how to look), the teaching cases, and every text
 * written in its code: help, faults, messages, headings. Each is in words of today, one name for
 * one thing.
 */
class EverySentenceTest {
  /** The most words from one full stop to the next in what a farrier reads at the horse. */
  private static final int MOST_WORDS = 25;

  /** The same elsewhere: reasons, stories, labels that list grades, exit codes in the help. */
  private static final int MOST_WORDS_BESIDE = 38;

  private static final Pattern AT_THE_HORSE =
      Pattern.compile("^sheet |^[A-Z]\\d{3} (title|says|meanwhile)$");

  private static final Pattern COMMENT = Pattern.compile("(?m)^\\s*(\\*|//|/\\*).*$");

  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

  private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  private static final Pattern HOLE = Pattern.compile("\\{[^}]*\\}");

  private static final Pattern STOP = Pattern.compile("[.?!](?=\\s|$)");

  /** Turns that nobody uses in a yard today, and second names for what has a name already. */
  private static final Pattern BANNED =
      Pattern.compile(
          "\\b(hairline|foot axis|living tissue|parted|ditch|images?|imaged"
              + "|speaks? (for|against|of)|held against|reckon(s|ed)?|tells? of|is told|are told"
              + "|going on with|gone on with|holds to|lies bare|look(ed|ing)? over|as near as"
              + "|the vet's case|were it so|hangs? on|bears? on|bearing on|angle less|for want of"
              + "|wants (its|some|sound|lowering|more|support|another|soft|cleaning)|lest|upon"
              + "|owned (up )?to|is to be|are to be|never taken for no|give leave)\\b",
          Pattern.CASE_INSENSITIVE);

  @Test
  void isShortAndInWordsOfToday() {
    Map<String, String> all = sentences();
    assertThat(all).hasSizeGreaterThan(1000);
    assertThat(faults(all)).isEmpty();
  }

  private static List<String> faults(Map<String, String> all) {
    List<String> faults = new ArrayList<>();
    all.forEach(
        (where, text) -> {
          BANNED.matcher(text).results().forEach(one -> faults.add(where + ": " + one.group()));
          int most = AT_THE_HORSE.matcher(where).find() ? MOST_WORDS : MOST_WORDS_BESIDE;
          for (String sentence : STOP.split(text)) {
            int words = sentence.trim().split("\\s+").length;
            if (words > most) {
              faults.add(where + ": " + words + " words: " + sentence);
            }
          }
        });
    return faults;
  }

  private static Map<String, String> sentences() {
    Rulebook book = Shipped.BOOK;
    Map<String, String> all = new TreeMap<>();
    for (RuleEntry rule : book.rules().values()) {
      put(all, rule.id() + " title", rule.title());
      put(all, rule.id() + " says", rule.text().says());
      put(all, rule.id() + " meanwhile", rule.text().meanwhile());
      put(all, rule.id() + " why", rule.why());
      put(all, rule.id() + " silent", rule.silent());
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

  /** Every teaching case: its title and story, what a teacher asks and what it teaches. */
  @Test
  void casesAreInTheSameWords() throws Exception {
    Map<String, String> all = new TreeMap<>();
    for (Exercise one :
        ExerciseLibrary.read(Shipped.EXERCISES, Vocabulary.of(Shipped.BOOK)).cases().values()) {
      put(all, one.name() + " case", String.join(" ", one.title() + ".", one.story()));
      put(all, one.name() + " asks", String.join(" ", one.asks()));
      put(all, one.name() + " notes", String.join(" ", one.notes()));
    }
    assertThat(all).hasSizeGreaterThan(150);
    assertThat(faults(all)).isEmpty();
  }

  /** Every text in the code, pieces joined by a plus read as one. */
  @Test
  void textsOfTheCodeAreInTheSameWords() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
        Matcher text = TEXT.matcher(JOINED.matcher(code).replaceAll(""));
        while (text.find()) {
          if (text.group(1).contains(" ")) {
            put(all, file.getFileName() + " " + text.start(), text.group(1));
          }
        }
      }
    }
    assertThat(all).hasSizeGreaterThan(1000);
    assertThat(faults(all)).isEmpty();
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
