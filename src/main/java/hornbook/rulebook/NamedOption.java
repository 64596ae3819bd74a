package hornbook.rulebook;

/** A technique or a support: the word of the formats and the words of the trade. */
public record NamedOption(String id, String label) {}
