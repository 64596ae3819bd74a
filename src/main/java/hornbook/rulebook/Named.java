package hornbook.rulebook;

import java.io.Serializable;

/** A technique or a support: the word of the formats and the words of the trade. */
public record Named(String id, String label) implements Serializable {}
