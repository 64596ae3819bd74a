package hornbook.assessment;

/** One size of shoe in the van and its width in mm. */
public record ShoeSize(String label, Double width) {}
