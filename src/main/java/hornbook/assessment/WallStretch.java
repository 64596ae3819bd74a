package hornbook.assessment;

/**
 * A stretch of the ground edge of the wall, from and to in mm along the edge from the middle of the
 * toe. Height is that of the defect above the ground, thickness that of the wall, flare what the
 * ground edge stands out beyond a straight wall, all in mm; null is unknown. Moist stays damp or
 * weeps; damp is wet from the yard and dries; mealy is filled with crumbling horn.
 */
public record WallStretch(
    Side side,
    Double from,
    Double to,
    WallState state,
    Double height,
    Double thickness,
    Double flare,
    Boolean moist,
    Boolean damp,
    Boolean mealy) {}
