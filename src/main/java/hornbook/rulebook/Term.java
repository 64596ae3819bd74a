package hornbook.rulebook;

/** A word of the trade, and what it means. */
public record Term(String word, String says) {}
