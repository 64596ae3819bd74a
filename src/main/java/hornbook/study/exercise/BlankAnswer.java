package hornbook.study.exercise;

import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A sheet to answer a case on: YAML with a word on every line, or a table for a class. */
public final class BlankAnswer {
  private static final int WIDTH = 96;

  private static final List<String> HOW =
      List.of(
          "Write what you think behind each colon. Leave a line as it is where you do not know:",
          "that is not the same as none, which says you looked and there is nothing.");

  private final Vocabulary known;
  private final StringBuilder text = new StringBuilder();

  private BlankAnswer(Vocabulary known) {
    this.known = known;
  }

  /**
   * The sheet of one learner.
   *
   * @param by name or number, or null
   */
  public static String yaml(Exercise exercise, String by, Vocabulary known) {
    return new BlankAnswer(known).sheet(exercise, by);
  }

  /** The table of a class, with a row for each name; there may be none. */
  public static String csv(Exercise exercise, Collection<String> names) {
    StringWriter table = new StringWriter();
    List<String> columns = AnswerTable.columns(feet(exercise));
    try (CSVPrinter rows = new CSVPrinter(table, CSVFormat.RFC4180)) {
      rows.printRecord(columns);
      for (String name : names) {
        List<String> row = new ArrayList<>(List.of(name));
        columns.subList(1, columns.size()).forEach(column -> row.add(""));
        rows.printRecord(row);
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return table.toString();
  }

  /** The feet of a case that are to be answered, in the order of its assessment. */
  public static List<Foot> feet(Exercise exercise) {
    return exercise.assessment().feet().stream()
        .filter(foot -> exercise.expected().containsKey(foot.limb()))
        .toList();
  }

  private String sheet(Exercise exercise, String by) {
    comment(exercise.shownTitle());
    HOW.forEach(this::comment);
    text.append("format: ").append(LearnerAnswer.FORMAT).append('\n');
    text.append("case: ").append(exercise.name()).append('\n');
    text.append("by: ").append(by == null ? "" : quoted(by)).append('\n');
    text.append("feet:\n");
    for (Foot foot : feet(exercise)) {
      foot(foot.limb());
    }
    comment("");
    comment("FINDINGS: " + String.join(", ", known.findings()));
    comment("REASONS TO CALL THE VET: " + String.join(", ", known.referrals()));
    comment("CAUTIONS: " + String.join(", ", known.cautions()));
    comment("RULES: hornbook rules list, hornbook rules show N003");
    return text.toString();
  }

  private void foot(Limb limb) {
    text.append("  - limb: ").append(limb.word()).append('\n');
    line("findings", "what you found: words of the list FINDINGS below, as [a, b]; none");
    line("vet", String.join(" | ", Vocabulary.URGENCIES));
    line("vetFor", "what the vet is called for: words of the second list below; none");
    line("technique", String.join(" | ", known.techniquesOrNone()));
    line("because", "why: ids of rules, such as [N003, G005], or your own words");
    line("ruledOut", "what may not be done and by which rule: {nail-on: [N003], heel-wedge: []}");
    line("supports", String.join(" | ", known.supports()) + "; none");
    line("cautions", "warnings that belong to the work: words of the list CAUTIONS below; none");
    line("ask", "what should still be looked at: [signs.hoofHeat, horse.weight]; none");
    line("nextVisit", "such as 42 days or 6 weeks");
    line("departs", "why, if you know the advice and still go another way");
  }

  private void line(String key, String how) {
    for (String part : broken(how, WIDTH - 8)) {
      text.append("    # ").append(part).append('\n');
    }
    text.append("    ").append(key).append(":\n");
  }

  private void comment(String words) {
    for (String part : broken(words, WIDTH - 2)) {
      text.append(("# " + part).stripTrailing()).append('\n');
    }
  }

  private static List<String> broken(String words, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
