package hornbook.cli.classroom;

import hornbook.advice.engine.Advisor;
import hornbook.rulebook.RuleEntry;
import hornbook.study.exercise.Exercise;
import hornbook.study.marking.ClassAnalysis;
import hornbook.study.marking.ClassMarks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the case that teaches a rule the class missed. */
final class TeachNext {
  private static final int MOST = 3;

  private final List<Exercise> cases;
  private final Advisor advisor;

  TeachNext(List<Exercise> cases, Advisor advisor) {
    this.cases = cases;
    this.advisor = advisor;
  }

  /** A line for each of the rules missed most that another case fires. */
  List<String> after(ClassMarks marks, Exercise done) {
    List<String> lines = new ArrayList<>();
    List<String> told = new ArrayList<>(List.of(done.name()));
    for (ClassAnalysis.Missed missed : ClassAnalysis.of(marks).missed()) {
      for (String rule : missed.rules()) {
        RuleEntry entry = advisor.book().rules().get(rule);
        Optional<Exercise> next = lines.size() < MOST ? teaching(entry, told) : Optional.empty();
        if (next.isPresent()) {
          Exercise one = next.get();
          told.add(one.name());
          lines.add(entry.title() + " (" + rule + "): " + one.name() + ", level " + one.level());
          break;
        }
      }
    }
    return lines;
  }

  /** The easiest case of the rule's topic on which the rule fires. */
  private Optional<Exercise> teaching(RuleEntry rule, List<String> told) {
    return cases.stream()
        .filter(one -> one.topics().contains(rule.topic()) && !told.contains(one.name()))
        .sorted(Comparator.comparing(Exercise::level))
        .filter(one -> fires(one, rule.id()))
        .findFirst();
  }

  private boolean fires(Exercise one, String rule) {
    return advisor.judge(one.assessment()).feet().stream()
        .flatMap(foot -> foot.firings().stream())
        .anyMatch(firing -> firing.rule().equals(rule));
  }
}
