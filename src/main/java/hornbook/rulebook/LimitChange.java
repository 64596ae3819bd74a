package hornbook.rulebook;

import hornbook.rulebook.fact.Limit;

/** A limit as a local practice moves it, and why. */
public record LimitChange(Limit before, Limit after, String reason) {
  /** Whether the limit was moved the way that makes the advice less careful. */
  public boolean lessSafe() {
    return switch (before.safer()) {
      case UP -> after.value() < before.value();
      case DOWN -> after.value() > before.value();
      case NEITHER -> false;
    };
  }
}
