package hornbook.rulebook;

/** A finding rules can make; a defect has to be answered by the technique that is chosen. */
public record FindingKind(String id, String label, boolean defect, String topic) {}
