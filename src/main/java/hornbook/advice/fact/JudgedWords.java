package hornbook.advice.fact;

import hornbook.assessment.Foot;
import hornbook.assessment.Judged;
import hornbook.assessment.word.CrackDepth;
import hornbook.assessment.word.Deformity;
import hornbook.foot.wall.WallGroup;

/** The words that say whether a vet has judged something lately. */
final class JudgedWords {
  private JudgedWords() {}

  static String of(Judged judged) {
    return switch (judged) {
      case CRACK -> "judgedCrack";
      case WALL_LOSS -> "judgedWallLoss";
      case YOUNG_LIMB -> "judgedYoungLimb";
      case LAMENESS -> "judgedLameness";
    };
  }

  /** Whether there is something on the foot that a vet may have judged. */
  static boolean something(Foot foot) {
    boolean crack =
        foot.cracks() != null
            && foot.cracks().stream()
                .anyMatch(
                    one -> one.depth() == CrackDepth.DEEP || Boolean.TRUE.equals(one.moves()));
    boolean limb = foot.deformity() != null && foot.deformity() != Deformity.NONE;
    boolean lame = foot.lameness() != null && foot.lameness() > 0;
    boolean lost =
        foot.wall() != null
            && foot.wall().stream()
                .anyMatch(one -> one.state() != null && WallGroup.of(one.state()).defect());
    return crack || limb || lame || lost;
  }
}
