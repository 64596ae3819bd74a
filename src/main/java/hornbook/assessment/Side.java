package hornbook.assessment;

import hornbook.assessment.word.Word;
import java.util.List;

/** A side of the foot: medial is inner, lateral is outer. */
public enum Side implements Word {
  MEDIAL("inner", "inside"),
  LATERAL("outer", "outside");

  private final List<String> also;

  Side(String... also) {
    this.also = List.of(also);
  }

  @Override
  public List<String> also() {
    return also;
  }
}
