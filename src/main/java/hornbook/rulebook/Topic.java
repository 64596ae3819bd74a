package hornbook.rulebook;

/** A chapter of the rule base; its rules' ids begin with the letter. */
public record Topic(String id, String letter, String title) {}
