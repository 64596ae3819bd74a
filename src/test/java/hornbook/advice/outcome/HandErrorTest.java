package hornbook.advice.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.fact.FactSheet;
import hornbook.assessment.Assessment;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A share of the wall may be over its limit by an error of length alone: one over the whole mapped
 * edge, or over the side it is a share of.
 */
class HandErrorTest {
  private static final Assessment HORSE =
      Given.leftFore(
          "wall: [{side: medial, from: 50 mm, to: 170 mm, state: sound},"
              + " {side: lateral, from: 0 mm, to: 80 mm, state: broken-away}]");

  private final List<WallStretch> wall;
  private final FactSheet sheet;
  private final Limit share;
  private final double error;

  HandErrorTest() {
    wall = HORSE.feet().get(0).wall();
    sheet = Shipped.ADVISOR.sheet(HORSE, 0);
    error = sheet.limits().get("error.length").value();
    share =
        Shipped.BOOK.limits().stream()
            .filter(one -> one.unit().equals("%"))
            .findFirst()
            .orElseThrow()
            .withValue(50);
  }

  private boolean reaches(ReadingKind kind, double away, double mapped) {
    double percent = share.value() + away / mapped * 100;
    return new HandError(sheet, wall).reaches(new Reading(kind.id(), percent, List.of()), share);
  }

  @Test
  void over_the_whole_edge_as_it_was_mapped() {
    assertThat(reaches(ReadingKind.SOUND_SHARE, error - 0.01, 200)).isTrue();
    assertThat(reaches(ReadingKind.SOUND_SHARE, -error + 0.01, 200)).isTrue();
    assertThat(reaches(ReadingKind.SOUND_SHARE, error + 0.01, 200)).isFalse();
    assertThat(reaches(ReadingKind.SOUND_SHARE, -error - 0.01, 200)).isFalse();
  }

  @Test
  void over_its_own_side_where_it_is_the_share_of_one() {
    assertThat(wall).extracting(WallStretch::side).containsExactly(Side.MEDIAL, Side.LATERAL);
    assertThat(reaches(ReadingKind.SOUND_SHARE_MEDIAL, error - 0.01, 120)).isTrue();
    assertThat(reaches(ReadingKind.SOUND_SHARE_MEDIAL, error + 0.01, 120)).isFalse();
    assertThat(reaches(ReadingKind.SOUND_SHARE_LATERAL, error - 0.01, 80)).isTrue();
    assertThat(reaches(ReadingKind.SOUND_SHARE_LATERAL, error + 0.01, 80)).isFalse();
  }

  @Test
  void not_for_what_is_no_share_of_the_wall() {
    Reading other = new Reading("toeLength", share.value() + 1, List.of("x"));
    assertThat(new HandError(sheet, wall).reaches(other, share)).isFalse();
  }
}
