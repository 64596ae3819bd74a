package hornbook.assessment;

/** A crack in the wall; null is unknown. */
public record Crack(
    CrackPlace place,
    Side side,
    CrackStart starts,
    CrackDepth depth,
    Boolean bleeds,
    Boolean moves) {}
