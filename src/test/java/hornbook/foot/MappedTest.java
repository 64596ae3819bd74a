package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hornbook.assessment.Side;
import hornbook.assessment.Stretch;
import hornbook.assessment.WallState;
import java.util.List;
import org.junit.jupiter.api.Test;

class MappedTest {

  @Test
  void putsStretchesInOrder() {
    List<Mapped> pieces =
        Mapped.inOrder(List.of(at(40, 90, WallState.SOUND), at(0, 40, WallState.SEPARATED)));
    assertThat(pieces).extracting(Mapped::from).containsExactly(0.0, 40.0);
    assertThat(pieces).extracting(Mapped::group).containsExactly(WallGroup.PARTED, WallGroup.SOUND);
  }

  @Test
  void whereTwoClaimTheSameEdgeTheWorseCounts() {
    List<Mapped> pieces =
        Mapped.inOrder(List.of(at(0, 100, WallState.SOUND), at(30, 50, WallState.CRUMBLING)));
    assertThat(pieces)
        .extracting(Mapped::from, Mapped::to, Mapped::group)
        .containsExactly(
            tuple(0.0, 30.0, WallGroup.SOUND),
            tuple(30.0, 50.0, WallGroup.PARTED),
            tuple(50.0, 100.0, WallGroup.SOUND));
  }

  @Test
  void aStretchWithoutEndsOrStateMapsNothing() {
    Stretch noEnd = Trade.stretch(Side.MEDIAL, 0.0, null, WallState.SOUND, null, null, null);
    Stretch noStart = Trade.stretch(Side.MEDIAL, null, 9.0, WallState.SOUND, null, null, null);
    Stretch noState = Trade.stretch(Side.MEDIAL, 0.0, 9.0, null, null, null, null);
    assertThat(Mapped.inOrder(List.of(noEnd, noStart, noState, at(9, 4, WallState.SOUND))))
        .isEmpty();
  }

  @Test
  void nothingLiesAheadOfTheMiddleOfTheToe() {
    List<Mapped> pieces = Mapped.inOrder(List.of(at(-3, 40, WallState.SOUND)));
    assertThat(pieces).extracting(Mapped::from, Mapped::to).containsExactly(tuple(0.0, 40.0));
    assertThat(Mapped.inOrder(List.of(at(-5, -1, WallState.SOUND)))).isEmpty();
  }

  @Test
  void everyStateHasItsWorth() {
    assertThat(WallGroup.of(WallState.SOUND)).isEqualTo(WallGroup.SOUND);
    for (WallState weak : List.of(WallState.FLARED, WallState.CRACKED, WallState.REPAIRED)) {
      assertThat(WallGroup.of(weak)).isEqualTo(WallGroup.WEAK);
      assertThat(WallGroup.of(weak).defect()).isFalse();
    }
    assertThat(WallGroup.of(WallState.SEPARATED)).isEqualTo(WallGroup.PARTED);
    assertThat(WallGroup.of(WallState.CRUMBLING)).isEqualTo(WallGroup.PARTED);
    assertThat(WallGroup.of(WallState.BROKEN_AWAY)).isEqualTo(WallGroup.MISSING);
    assertThat(WallGroup.of(WallState.RESECTED)).isEqualTo(WallGroup.MISSING);
    assertThat(WallGroup.PARTED.defect() && WallGroup.MISSING.defect()).isTrue();
  }

  private static Stretch at(double from, double to, WallState state) {
    return Trade.stretch(Side.MEDIAL, from, to, state);
  }
}
