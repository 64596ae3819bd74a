package hornbook.advice;

import hornbook.rulebook.fact.Conclusion;

/** A rule that fired on a foot, and what it concluded. */
public record FiredRule(String rule, Conclusion conclusion) {}
