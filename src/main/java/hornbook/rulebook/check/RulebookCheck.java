package hornbook.rulebook.check;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.FaultCollector;

/**
 * Whether the parts of a rule base fit together. All of it is told from what is written; nothing is
 * compiled or fired.
 */
public final class RulebookCheck {
  private RulebookCheck() {}

  public static void check(Rulebook book, FaultCollector faults) {
    new HeadCheck(book, faults).check();
    new SourceCheck(book, faults).check();
    new LimitCheck(book, faults).check();
    new OrderCheck(book, faults).check();
    new RuleCheck(book, faults).check();
    new TextCheck(book, faults).check();
    new MeanwhileCheck(book, faults).check();
    new FindingCheck(book, faults).check();
    AllDemands askings = new AllDemands(book);
    new UnreachableCheck(book, askings, faults).check();
    new RedundancyCheck(book, askings, faults).check();
  }
}
