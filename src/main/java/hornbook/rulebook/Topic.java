package hornbook.rulebook;

import java.io.Serializable;

/** A chapter of the rule base; its rules' ids begin with the letter. */
public record Topic(String id, String letter, String title) implements Serializable {}
