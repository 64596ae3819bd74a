package hornbook.rulebook;

/** A word of the trade, and what it means. */
public record GlossaryTerm(String word, String says) {}
