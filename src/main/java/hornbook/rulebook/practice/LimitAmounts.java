package hornbook.rulebook.practice;

import hornbook.rulebook.fact.Limit;

/** Amounts as people write them, in the unit of the limit they are for. */
public final class LimitAmounts {
  private LimitAmounts() {}

  /** In the limit's unit; null where the text is no such amount. */
  public static Double of(Limit limit, String text) {
    return new LimitAmount(limit).of(text);
  }
}
