package hornbook.foot;

/** A run of edge along which a nail may enter, ends included; mm from the middle of the toe. */
public record Window(double from, double to) {}
