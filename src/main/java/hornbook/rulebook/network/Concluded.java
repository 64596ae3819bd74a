package hornbook.rulebook.network;

import hornbook.rulebook.fact.Conclusion;

/** A rule that fired, by its id, and what it concluded. */
public record Concluded(String rule, Conclusion conclusion) {}
