package hornbook.assessment;

import hornbook.assessment.word.CrackDepth;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackRuns;
import hornbook.assessment.word.CrackStart;

/** A crack in the wall; null is unknown. */
public record WallCrack(
    CrackPlace place,
    Side side,
    CrackStart starts,
    CrackDepth depth,
    Boolean bleeds,
    Boolean moves,
    Boolean seeps,
    CrackRuns runs) {}
