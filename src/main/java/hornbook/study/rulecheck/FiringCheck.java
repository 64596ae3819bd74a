package hornbook.study.rulecheck;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import hornbook.study.generate.GeneratedFeet;
import hornbook.study.rulecase.CaseCheck;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;

/**
 * What firing the rules shows to be wrong with a rule base that reads well: cases that do not do
 * what they are there for, and rules that say opposite things.
 *
 * @param faults everything found, in the order of the files
 * @param cases the cases run
 * @param feet the feet made up and run
 */
public record FiringCheck(List<RuleFault> faults, int cases, int feet) {
  /** Enough that every rule but the rarest fires more than once, and still a matter of seconds. */
  public static final int FEET = 3000;

  /** Runs all cases of the library, and so many feet made up from the seed. */
  public static FiringCheck of(LoadedRules rules, CaseLibrary library, int feet, long seed)
      throws IOException {
    return of(rules, library, feet, seed, steps -> {});
  }

  /** How many steps the work on a library and so many feet is told in. */
  public static int steps(CaseLibrary library, int feet) {
    return library.rules().size() + feet;
  }

  /**
   * The same, telling how far it has come.
   *
   * @param done takes the number of {@link #steps} that are done
   */
  public static FiringCheck of(
      LoadedRules rules, CaseLibrary library, int feet, long seed, LongConsumer done)
      throws IOException {
    List<RuleFault> faults = new ArrayList<>(ComputingCheck.faults(rules.book()));
    if (!faults.isEmpty()) {
      return new FiringCheck(List.copyOf(faults), 0, 0);
    }
    faults.addAll(new CaseCheck(rules).faults(library, done));
    Contradictions contradictions = new Contradictions(new Advisor(rules));
    List<Assessment> known = new ArrayList<>();
    for (RuleCase one : library.rules().values()) {
      contradictions.run(one.assessment(), CaseLibrary.shown(one.file()));
      known.add(one.assessment());
    }
    for (Map.Entry<String, Assessment> one : library.exercises().entrySet()) {
      contradictions.run(one.getValue(), one.getKey());
      known.add(one.getValue());
    }
    GeneratedFeet paper = new GeneratedFeet(rules.book(), known, seed);
    for (int number = 0; number < feet; number++) {
      contradictions.run(paper.foot(number), "made-up foot " + number + " of seed " + seed);
      done.accept(library.rules().size() + number + 1);
    }
    faults.addAll(contradictions.faults());
    return new FiringCheck(faults.stream().sorted().distinct().toList(), known.size(), feet);
  }
}
