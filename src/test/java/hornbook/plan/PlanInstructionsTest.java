package hornbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.Technique;
import hornbook.plan.time.OwnerWithoutWork;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** No sentence and no limit of the job sheets lies in the rule base without being used. */
class PlanInstructionsTest {
  private static final List<Plan> SHEETS = new ArrayList<>();

  @BeforeAll
  static void makeEverySheet() throws IOException {
    SHEETS.addAll(Jobs.all(Jobs.ANYWAY));
    SHEETS.addAll(Jobs.all(Jobs.ANYWAY.withAdd(8.0).withTargetRatio(2.5).withTargetAngle(50.0)));
    SHEETS.addAll(Jobs.all(Jobs.ANYWAY.withTargetRatio(1.2).withDip(4.0)));
    SHEETS.addAll(Jobs.all(Jobs.ANYWAY.withAdd(20.0).withTargetRatio(4.0).withDip(40.0)));
    SHEETS.addAll(Jobs.all(Jobs.ANYWAY.withAdd(3.0).withTargetAngle(40.0).withDip(30.0)));
    List<String> supports = Shipped.BOOK.supports().stream().map(one -> one.id()).toList();
    for (Plan plan : Jobs.all(Jobs.ANYWAY.withWedge(5.0).withSupports(supports))) {
      SHEETS.add(plan);
    }
    for (String written :
        Files.readString(Path.of("src/test/resources/hornbook/plan/feet.txt")).split("---\n")) {
      Advice advice = Jobs.advise(written);
      for (Technique technique : Technique.values()) {
        SHEETS.add(Jobs.plan(advice, technique, Jobs.ANYWAY));
        SHEETS.add(
            Jobs.plan(
                advice,
                technique,
                Jobs.ANYWAY.withSupports(List.of("clips", "longer-branch", "rolled-toe"))));
      }
    }
  }

  @Test
  void everySentenceStandsOnSomeSheet() {
    Set<String> said = new TreeSet<>();
    SHEETS.forEach(plan -> said.addAll(Jobs.said(plan)));
    SHEETS.forEach(
        plan -> OwnerWithoutWork.lines(plan.advice()).forEach(line -> said.add(line.id())));
    assertThat(said).containsExactlyElementsOf(new TreeSet<>(Shipped.BOOK.instructions().keySet()));
  }

  @Test
  void everySentenceHasAllItsHolesFilled() {
    Pattern hole = Pattern.compile("\\{(\\w+)}");
    for (Plan plan : SHEETS) {
      plan.lines()
          .values()
          .forEach(
              lines ->
                  lines.forEach(
                      line ->
                          assertThat(line.holes().keySet())
                              .as(line.instruction().id())
                              .containsAll(
                                  hole.matcher(line.instruction().says())
                                      .results()
                                      .map(one -> one.group(1))
                                      .collect(Collectors.toSet()))));
    }
  }

  @Test
  void everyLimitKeptForSheetsIsUsedOnOne() throws IOException {
    Set<String> used = new TreeSet<>();
    for (Plan plan : SHEETS) {
      plan.lines()
          .values()
          .forEach(
              lines -> lines.forEach(line -> line.figures().forEach(one -> collect(one, used))));
      plan.reckoned().forEach(one -> collect(one, used));
      plan.steps().forEach(step -> collect(step.minutes(), used));
      if (plan.interval() != null) {
        collect(plan.interval(), used);
      }
    }
    String file = Files.readString(Path.of("rules/plan/limits.yaml"));
    for (Limit limit : Shipped.BOOK.limits()) {
      if (file.contains("- id: " + limit.id() + "\n")) {
        assertThat(used).contains(limit.id());
      }
    }
  }

  private static void collect(Figure figure, Set<String> used) {
    if (figure.limit() != null) {
      used.add(figure.limit().id());
    }
    figure.parts().values().forEach(part -> collect(part, used));
  }
}
