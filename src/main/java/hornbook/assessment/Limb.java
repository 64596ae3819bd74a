package hornbook.assessment;

import hornbook.assessment.word.Word;
import java.util.List;

/** The limb a foot belongs to. */
public enum Limb implements Word {
  LEFT_FORE("left fore", "left-front", "left front", "near-fore", "near fore", "LF", "NF"),
  RIGHT_FORE("right fore", "right-front", "right front", "off-fore", "off fore", "RF", "OF"),
  LEFT_HIND("left hind", "near-hind", "near hind", "LH", "NH"),
  RIGHT_HIND("right hind", "off-hind", "off hind", "RH", "OH");

  private final List<String> also;

  Limb(String... also) {
    this.also = List.of(also);
  }

  @Override
  public List<String> also() {
    return also;
  }

  public boolean fore() {
    return this == LEFT_FORE || this == RIGHT_FORE;
  }

  /** The other foot of the pair: left fore and right fore, left hind and right hind. */
  public Limb pair() {
    return switch (this) {
      case LEFT_FORE -> RIGHT_FORE;
      case RIGHT_FORE -> LEFT_FORE;
      case LEFT_HIND -> RIGHT_HIND;
      case RIGHT_HIND -> LEFT_HIND;
    };
  }
}
