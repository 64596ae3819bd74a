package hornbook.advice;

import hornbook.rulebook.fact.Conclusion;

/** A rule that fired on a foot, and what it concluded. */
public record Firing(String rule, Conclusion conclusion) {}
