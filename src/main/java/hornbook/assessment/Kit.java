package hornbook.assessment;

import java.util.List;

/** What is in the van. A null list of shoe sizes was not given. */
public record Kit(CastingTape wrap, ShoeStock shoe, List<ShoeSize> shoeSizes, Adhesive adhesive) {}
