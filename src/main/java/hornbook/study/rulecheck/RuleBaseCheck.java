package hornbook.study.rulecheck;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFault;
import hornbook.study.rulecase.CaseCheck;
import hornbook.study.rulecase.CaseLibrary;
import java.util.List;

/**
 * What was found wrong with a rule base, and how far it was looked over.
 *
 * @param book what could be read of it
 * @param faults all that was found, in the order of the files
 * @param cases the cases run; none where the rules were only read
 * @param feet the feet made up and run
 */
public record RuleBaseCheck(
    Rulebook book, List<RuleFault> faults, Reach reach, int cases, int feet) {

  /** How far a rule base was looked over. */
  public enum Reach {
    /** Read and run. */
    RUN,
    /** Read and not run: what reading shows to be wrong has to be mended first. */
    FAULTY,
    /** Read and not run: nobody said that its authors are trusted. */
    UNTRUSTED
  }

  public RuleBaseCheck {
    faults = faults.stream().sorted().distinct().toList();
  }

  /** Of a rule base that has to be mended before it can be run. */
  public static RuleBaseCheck faulty(Rulebook book, List<RuleFault> faults) {
    return new RuleBaseCheck(book, faults, Reach.FAULTY, 0, 0);
  }

  /** Of one that nobody said is trusted; its cases were only read, too. */
  public static RuleBaseCheck untrusted(Rulebook book, CaseLibrary library) {
    return new RuleBaseCheck(book, CaseCheck.written(book, library), Reach.UNTRUSTED, 0, 0);
  }

  /** Of one that was run. */
  public static RuleBaseCheck run(Rulebook book, FiringCheck checkup) {
    return new RuleBaseCheck(book, checkup.faults(), Reach.RUN, checkup.cases(), checkup.feet());
  }
}
