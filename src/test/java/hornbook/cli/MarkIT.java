package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.study.exercise.FilledAnswer;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.marking.Lessons;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.Variance;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Classes marked by the packaged program, against the mistakes that were put into their answers.
 */
class MarkIT {
  private static final int LEARNERS = 20;
  private static final List<String> CASES =
      List.of("showjumper-torn-side", "nail-in-the-frog", "sound-hunter-reset");

  /** The line of an answer that wins each point, in the order of the scheme, and its marks. */
  private static final Map<String, String> LINES = new LinkedHashMap<>();

  private static final double[] MARKS = {4, 2, 4, 3, 2, 2, 1, 1, 1};

  static {
    LINES.put("vet", "vet");
    LINES.put("referrals", "vetFor");
    LINES.put("technique", "technique");
    LINES.put("reasons", "because");
    LINES.put("ruled-out", "ruledOut");
    LINES.put("findings", "findings");
    LINES.put("supports", "supports");
    LINES.put("cautions", "cautions");
    LINES.put("questions", "ask");
  }

  @TempDir Path folder;

  @TempDir static Path few;

  private Program.Run run(String... arguments) {
    return Program.here().from(folder).with(arguments);
  }

  @BeforeAll
  static void copyCases() {
    Program.library(few, CASES.toArray(String[]::new));
  }

  /** With no other cases to look through for one to teach next than those of this class. */
  private Program.Run mark(String... arguments) {
    return run(
        Stream.of(Stream.of("mark", "--library", few.toString()), Stream.of(arguments))
            .flatMap(all -> all)
            .toArray(String[]::new));
  }

  /** The lines of the model answer by their keys. */
  private static Map<String, String> model(String name) {
    LearnerAnswer model = Lessons.model(Lessons.KEYS.get(name));
    Map<String, String> lines = new LinkedHashMap<>();
    for (String line : FilledAnswer.yaml(model).split("\n")) {
      if (line.startsWith("    ")) {
        lines.put(line.strip().substring(0, line.strip().indexOf(':')), line);
      }
    }
    return lines;
  }

  /** Which points each learner wins: the better the learner, the more of them. */
  private static boolean[][] won(long seed) {
    Random random = new Random(seed);
    boolean[][] won = new boolean[LEARNERS][LINES.size()];
    for (int learner = 0; learner < LEARNERS; learner++) {
      for (int point = 0; point < LINES.size(); point++) {
        won[learner][point] = random.nextInt(LEARNERS + 4) <= learner + 2;
      }
    }
    return won;
  }

  /** Fills the blank sheets of the class: what a learner does not win is left as it was. */
  private void fill(String name, boolean[][] won) throws IOException {
    Map<String, String> model = model(name);
    for (int learner = 0; learner < LEARNERS; learner++) {
      Path file = folder.resolve("monday/" + name + "/" + (learner + 1) + ".yaml");
      String sheet = Files.readString(file);
      int point = 0;
      for (String key : LINES.values()) {
        if (won[learner][point++]) {
          sheet = sheet.replace("\n    " + key + ":\n", "\n" + model.get(key) + "\n");
        }
      }
      Files.writeString(file, sheet);
    }
  }

  @Test
  void a_class_of_twenty_and_three_cases_is_marked_as_its_mistakes_were_made() throws Exception {
    String names =
        String.join("\n", IntStream.rangeClosed(1, LEARNERS).mapToObj(String::valueOf).toList());
    Files.writeString(folder.resolve("names.txt"), names);
    run(
            "exercise",
            "sheet",
            CASES.get(0),
            CASES.get(1),
            CASES.get(2),
            "--class",
            "names.txt",
            "-o",
            "monday")
        .ended(0);
    for (int at = 0; at < CASES.size(); at++) {
      boolean[][] won = won(at);
      fill(CASES.get(at), won);
      JsonNode marks =
          mark(CASES.get(at), "monday/" + CASES.get(at), "--format", "json").done().json();
      assertMarks(won, marks);
      assertAnalysis(won, marks.get("class"));
    }
  }

  private static void assertMarks(boolean[][] won, JsonNode marks) {
    assertThat(marks.get("learners")).hasSize(LEARNERS);
    for (JsonNode learner : marks.get("learners")) {
      boolean[] own = won[learner.get("by").asInt() - 1];
      double sum = 0;
      for (int point = 0; point < own.length; point++) {
        double expected = own[point] ? MARKS[point] : 0;
        sum += expected;
        assertThat(learner.at("/points/" + point + "/marks").asDouble()).isEqualTo(expected);
      }
      assertThat(learner.get("marks").asDouble()).isEqualTo(sum);
      assertThat(learner.get("capped").asBoolean()).isFalse();
    }
  }

  /** Difficulty, discrimination, KR-20 and mean from the mistakes alone, by their formulas. */
  private static void assertAnalysis(boolean[][] won, JsonNode analysis) {
    int points = MARKS.length;
    double[] totals = new double[LEARNERS];
    double[] rights = new double[LEARNERS];
    for (int learner = 0; learner < LEARNERS; learner++) {
      for (int point = 0; point < points; point++) {
        totals[learner] += won[learner][point] ? MARKS[point] : 0;
        rights[learner] += won[learner][point] ? 1 : 0;
      }
    }
    assertThat(analysis.get("mean").asDouble())
        .isCloseTo(Mean.of(totals).getAsDouble(), within(1e-4));
    double pq = 0;
    for (int point = 0; point < points; point++) {
      final int at = point;
      double p =
          IntStream.range(0, LEARNERS).filter(one -> won[one][at]).count() / (double) LEARNERS;
      pq += p * (1 - p);
      JsonNode item = analysis.at("/points/" + point);
      assertThat(item.get("difficulty").asDouble()).isCloseTo(p, within(1e-4));
      Double biserial = biserial(won, totals, point, p);
      if (biserial == null) {
        assertThat(item.get("discrimination").isNull()).isTrue();
      } else {
        assertThat(item.get("discrimination").asDouble()).isCloseTo(biserial, within(1e-4));
      }
    }
    double variance = Variance.of(rights).getAsDouble() * (LEARNERS - 1) / LEARNERS;
    assertThat(analysis.get("kr20").asDouble())
        .isCloseTo(points / (points - 1.0) * (1 - pq / variance), within(1e-4));
  }

  /** The point-biserial correlation by the means of those who won and those who did not. */
  private static Double biserial(boolean[][] won, double[] totals, int point, double p) {
    if (p == 0 || p == 1) {
      return null;
    }
    double[] rest = new double[LEARNERS];
    List<Double> right = new ArrayList<>();
    List<Double> wrong = new ArrayList<>();
    for (int learner = 0; learner < LEARNERS; learner++) {
      rest[learner] = totals[learner] - (won[learner][point] ? MARKS[point] : 0);
      (won[learner][point] ? right : wrong).add(rest[learner]);
    }
    double all = Math.sqrt(Variance.of(rest).getAsDouble() * (LEARNERS - 1) / LEARNERS);
    return (mean(right) - mean(wrong)) / all * Math.sqrt(p * (1 - p));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  @Test
  void a_table_is_marked_row_by_row_and_a_bad_row_is_told_in_its_place() throws Exception {
    Files.writeString(
        folder.resolve("class.csv"),
        """
        by,findings,vet,vetFor,technique,because,ruledOut,supports,cautions,ask
        1,not-nailable,none,none,glue-on,N003;G005,nail-on: N003,none,chemicals;fire,none
        2,not-nailable,none,none,glueon,N003,nail-on,none,,none
        3,,now,,nail-on,,,,,
        """);
    Program.Run run = mark(CASES.get(0), "class.csv", "--format", "json");
    JsonNode learners = run.ended(65).json().get("learners");
    assertThat(learners.findValuesAsText("by")).containsExactly("1", "2", "3");
    assertThat(learners.at("/0/marks").asDouble()).isGreaterThan(15);
    assertThat(learners.at("/1/marks").isNull()).isTrue();
    assertThat(learners.at("/1/error").asText())
        .contains("class.csv:3", "technique", "glueon", "nearest: glue-on");
    assertThat(learners.at("/2/capped").asBoolean()).isTrue();
    String page = mark(CASES.get(0), "class.csv").ended(65).out();
    assertThat(page).contains("cannot be read: see below", "class.csv:3", "1 dangerous miss");
    Files.writeString(folder.resolve("semicolons.csv"), "by;vet;technique\n1;none;glue-on\n");
    assertThat(mark(CASES.get(0), "semicolons.csv").done().out()).contains("1 of 1");
    Files.writeString(folder.resolve("wide.csv"), "by" + ",a".repeat(600_000) + "\n");
    assertThat(mark(CASES.get(0), "wide.csv").ended(65).out())
        .contains("wide.csv:1:1", "more than 1000 columns", "up to 1000 columns");
    assertThat(mark(CASES.get(0), "semicolons.csv", "--marker", "wide.csv").refused(65).err())
        .contains("more than 1000 columns");
    Files.writeString(folder.resolve("wrong.csv"), "by,vett\n1,none\n");
    assertThat(mark(CASES.get(0), "wrong.csv").ended(65).out())
        .contains("unknown column", "nearest: vet");
  }

  @Test
  void two_feet_stand_in_columns_of_their_own() throws Exception {
    String pair = "club-foot-and-its-pair";
    String head = run("exercise", "sheet", pair, "--format", "csv").done().out();
    assertThat(head).contains("right-fore.vet", "left-fore.technique");
    Files.writeString(
        folder.resolve("class.csv"),
        "by,right-fore.technique,left-fore.technique\n1,nail-on-adapted,nail-on\n");
    JsonNode marks = run("mark", pair, "class.csv", "--format", "json").done().json();
    assertThat(marks.get("of").asInt()).isEqualTo(40);
    assertThat(marks.at("/learners/0/marks").asDouble()).isEqualTo(8);
  }

  @Test
  void every_learner_gets_a_critique_and_the_marks_go_into_a_spreadsheet_and_back()
      throws Exception {
    Files.writeString(
        folder.resolve("class.csv"),
        "by,vet,technique\nAnn,none,glue-on\nBen,none,nail-on\n=1+1,none,leave-unshod\n");
    String csv =
        mark(CASES.get(0), "class.csv", "--format", "csv", "--feedback", "out").done().out();
    assertThat(csv).contains("left-fore/technique", "'=1+1");
    assertThat(folder.resolve("out/ann.html")).content().contains("Technique: a glued shoe");
    assertThat(folder.resolve("out/ben.html")).content().contains("1 point is dangerous");
    Files.writeString(folder.resolve("same.csv"), csv);
    JsonNode same =
        mark(CASES.get(0), "class.csv", "--marker", "same.csv", "--format", "json").done().json();
    assertThat(same.at("/agreement/kappa").asDouble()).isEqualTo(1);
    Files.writeString(folder.resolve("other.csv"), "by,left-fore/technique\nAnn,0\nBen,4\n");
    JsonNode other =
        mark(CASES.get(0), "class.csv", "--marker", "other.csv", "--format", "json").done().json();
    assertThat(other.at("/agreement/kappa").asDouble()).isEqualTo(-1);
    assertThat(other.at("/agreement/compared").asInt()).isEqualTo(2);
  }

  @Test
  void what_cannot_be_computed_of_one_learner_is_empty() {
    Written.file(
        folder, "one.yaml", "format: hornbook-answer/1\nfeet: [{limb: left-fore, vet: none}]\n");
    JsonNode marks = run("mark", CASES.get(0), "one.yaml", "--format", "json").done().json();
    assertThat(marks.at("/class/kr20").isNull()).isTrue();
    assertThat(marks.at("/class/alpha").isNull()).isTrue();
    assertThat(marks.at("/class/points/0/discrimination").isNull()).isTrue();
    assertThat(marks.get("agreement").isNull()).isTrue();
  }

  @Test
  void a_scheme_of_ones_own_is_held_to_and_checked() throws Exception {
    Written.file(
        folder, "one.yaml", "format: hornbook-answer/1\nfeet: [{limb: left-fore, vet: none}]\n");
    Files.writeString(
        folder.resolve("ours.yaml"),
        "format: hornbook-marking/1\nname: ours\npoints:\n  vet: {marks: 10}\n");
    JsonNode marks =
        mark(CASES.get(0), "one.yaml", "--scheme", "ours.yaml", "--format", "json").done().json();
    assertThat(marks.get("scheme").asText()).isEqualTo("ours");
    assertThat(marks.at("/learners/0/marks").asDouble()).isEqualTo(10);
    Files.writeString(
        folder.resolve("bad.yaml"),
        "format: hornbook-marking/1\nwrong: 3\npoints:\n  vett: {marks: x}\n");
    assertThat(mark(CASES.get(0), "one.yaml", "--scheme", "bad.yaml").refused(65).err())
        .contains("bad.yaml:2", "0 to 1", "nearest", "vet");
    assertThat(mark(CASES.get(0), "nothing").refused(66).err()).contains("nothing");
  }

  /** Model answers of every case, marked by the program as files. */
  @Test
  void a_model_answer_written_down_wins_all_marks() {
    for (String name : CASES) {
      LearnerAnswer model = Lessons.model(Lessons.KEYS.get(name));
      List<FootAnswer> feet = model.feet();
      assertThat(feet).isNotEmpty();
      Written.file(folder, name + ".yaml", FilledAnswer.yaml(model));
      JsonNode marks = mark(name, name + ".yaml", "--format", "json").done().json();
      assertThat(marks.at("/learners/0/marks").asDouble()).isEqualTo(marks.get("of").asDouble());
    }
  }
}
