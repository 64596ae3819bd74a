package hornbook.rulebook;

/**
 * Whether the parts of a rule base fit together. All of it is told from what is written; nothing is
 * compiled or fired.
 */
final class RulebookCheck {
  private RulebookCheck() {}

  static void check(Rulebook book, Faults faults) {
    new HeadCheck(book, faults).check();
    new SourceCheck(book, faults).check();
    new LimitCheck(book, faults).check();
    new OrderCheck(book, faults).check();
    new RuleCheck(book, faults).check();
    new TextCheck(book, faults).check();
    new FindingCheck(book, faults).check();
    Askings askings = new Askings(book);
    new NeverCheck(book, askings, faults).check();
    new TogetherCheck(book, askings, faults).check();
  }
}
