package hornbook.foot.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.foot.Trade;
import java.util.List;
import org.junit.jupiter.api.Test;

class MappedPieceTest {

  @Test
  void putsStretchesInOrder() {
    List<MappedPiece> pieces =
        MappedPiece.inOrder(List.of(at(40, 90, WallState.SOUND), at(0, 40, WallState.SEPARATED)));
    assertThat(pieces).extracting(MappedPiece::from).containsExactly(0.0, 40.0);
    assertThat(pieces)
        .extracting(MappedPiece::group)
        .containsExactly(WallGroup.SEPARATED, WallGroup.SOUND);
  }

  @Test
  void whereTwoClaimTheSameEdgeTheWorseCounts() {
    List<MappedPiece> pieces =
        MappedPiece.inOrder(List.of(at(0, 100, WallState.SOUND), at(30, 50, WallState.CRUMBLING)));
    assertThat(pieces)
        .extracting(MappedPiece::from, MappedPiece::to, MappedPiece::group)
        .containsExactly(
            tuple(0.0, 30.0, WallGroup.SOUND),
            tuple(30.0, 50.0, WallGroup.SEPARATED),
            tuple(50.0, 100.0, WallGroup.SOUND));
  }

  @Test
  void aStretchThatALighterOneLiesInStaysOnePiece() {
    List<MappedPiece> pieces =
        MappedPiece.inOrder(List.of(at(0, 100, WallState.CRUMBLING), at(30, 50, WallState.SOUND)));
    assertThat(pieces)
        .extracting(MappedPiece::from, MappedPiece::to)
        .containsExactly(tuple(0.0, 100.0));
  }

  @Test
  void aStretchWithoutEndsOrStateMapsNothing() {
    WallStretch noEnd = Trade.stretch(Side.MEDIAL, 0.0, null, WallState.SOUND, null, null, null);
    WallStretch noStart = Trade.stretch(Side.MEDIAL, null, 9.0, WallState.SOUND, null, null, null);
    WallStretch noState = Trade.stretch(Side.MEDIAL, 0.0, 9.0, null, null, null, null);
    assertThat(MappedPiece.inOrder(List.of(noEnd, noStart, noState, at(9, 4, WallState.SOUND))))
        .isEmpty();
  }

  @Test
  void nothingLiesAheadOfTheMiddleOfTheToe() {
    List<MappedPiece> pieces = MappedPiece.inOrder(List.of(at(-3, 40, WallState.SOUND)));
    assertThat(pieces)
        .extracting(MappedPiece::from, MappedPiece::to)
        .containsExactly(tuple(0.0, 40.0));
    assertThat(MappedPiece.inOrder(List.of(at(-5, -1, WallState.SOUND)))).isEmpty();
  }

  @Test
  void everyStateHasItsWorth() {
    assertThat(WallGroup.of(WallState.SOUND)).isEqualTo(WallGroup.SOUND);
    for (WallState weak : List.of(WallState.FLARED, WallState.CRACKED, WallState.REPAIRED)) {
      assertThat(WallGroup.of(weak)).isEqualTo(WallGroup.WEAK);
      assertThat(WallGroup.of(weak).defect()).isFalse();
    }
    assertThat(WallGroup.of(WallState.SEPARATED)).isEqualTo(WallGroup.SEPARATED);
    assertThat(WallGroup.of(WallState.CRUMBLING)).isEqualTo(WallGroup.SEPARATED);
    assertThat(WallGroup.of(WallState.BROKEN_AWAY)).isEqualTo(WallGroup.MISSING);
    assertThat(WallGroup.of(WallState.RESECTED)).isEqualTo(WallGroup.MISSING);
    assertThat(WallGroup.SEPARATED.defect() && WallGroup.MISSING.defect()).isTrue();
  }

  private static WallStretch at(double from, double to, WallState state) {
    return Trade.stretch(Side.MEDIAL, from, to, state);
  }
}
