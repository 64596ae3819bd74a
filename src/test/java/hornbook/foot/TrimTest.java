package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Foot;
import hornbook.assessment.Measures;
import hornbook.assessment.Side;
import hornbook.assessment.Visit;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.Shoeing;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrimTest {
  private static final TrimLimits LIMITS = new TrimLimits(6, 10);

  private static Trim trim(Double said, Shoeing shoeing, Integer days) {
    Map<String, Object> measures = new HashMap<>();
    measures.put("toTrim", said);
    Map<String, Object> foot = new HashMap<>();
    foot.put("measures", Given.a(Measures.class, measures));
    foot.put("shoeing", shoeing);
    Map<String, Object> visit = new HashMap<>();
    visit.put("shodDaysAgo", days);
    return Trim.of(Given.a(Foot.class, foot), Given.a(Visit.class, visit), Trade.GROWTH, LIMITS);
  }

  private static WallStretch stretch(WallState state, Double height) {
    return Trade.stretch(Side.MEDIAL, 0.0, 40.0, state, height, 9.0, true);
  }

  /** Mean growth 8.5 mm a month (lungwitz-1913): 21 days are 0.69 months, 5.9 mm. */
  @Test
  void theAmountIsSaidOrGrownOrUsual() {
    assertThat(trim(8.0, Shoeing.NAILED, 42)).isEqualTo(new Trim(8, Trim.Known.SAID));
    Trim grown = trim(null, Shoeing.NAILED, 21);
    assertThat(grown.mm()).isCloseTo(5.9, within(0.05));
    assertThat(grown.known()).isEqualTo(Trim.Known.GROWN);
    assertThat(trim(null, Shoeing.NAILED, 200).mm()).isEqualTo(10);
    assertThat(trim(null, Shoeing.NAILED, 0).mm()).isZero();
    assertThat(trim(null, Shoeing.UNSHOD, 42)).isEqualTo(new Trim(6, Trim.Known.USUAL));
    assertThat(trim(null, null, null)).isEqualTo(new Trim(6, Trim.Known.USUAL));
  }

  @Test
  void lowDamageGoesAndTallDamageStays() {
    Trim said = new Trim(8, Trim.Known.SAID);
    List<WallStretch> left =
        said.off(
            List.of(
                stretch(WallState.CRUMBLING, 6.0),
                stretch(WallState.SEPARATED, 30.0),
                stretch(WallState.BROKEN_AWAY, null),
                stretch(WallState.FLARED, 6.0)));
    assertThat(left.get(0).state()).isEqualTo(WallState.SOUND);
    assertThat(left.get(0).moist()).isNull();
    assertThat(left.get(0).thickness()).isEqualTo(9);
    assertThat(left.get(1).state()).isEqualTo(WallState.SEPARATED);
    assertThat(left.get(1).height()).isEqualTo(22);
    assertThat(left.get(1).moist()).isTrue();
    assertThat(left.get(2).state()).isEqualTo(WallState.BROKEN_AWAY);
    assertThat(left.get(3).state()).isEqualTo(WallState.FLARED);
    assertThat(said.off(null)).isNull();
  }

  @Test
  void damageAsHighAsTheTrimGoesWithIt() {
    List<WallStretch> left =
        new Trim(8, Trim.Known.SAID).off(List.of(stretch(WallState.CRUMBLING, 8.0)));
    assertThat(left.get(0).state()).isEqualTo(WallState.SOUND);
  }

  @Test
  void damageLacksAHeightWhereATrimMayTakeIt() {
    Trim usual = new Trim(6, Trim.Known.USUAL);
    assertThat(usual.lacksHeight(stretch(WallState.CRUMBLING, null))).isTrue();
    assertThat(usual.lacksHeight(stretch(WallState.CRACKED, null))).isTrue();
    assertThat(usual.lacksHeight(stretch(WallState.CRUMBLING, 6.0))).isFalse();
    assertThat(usual.lacksHeight(stretch(WallState.SOUND, null))).isFalse();
    assertThat(usual.lacksHeight(stretch(null, null))).isFalse();
    Trim nothing = new Trim(0, Trim.Known.SAID);
    assertThat(nothing.lacksHeight(stretch(WallState.CRUMBLING, null))).isFalse();
  }

  @Test
  void lowDamageLacksAnAmountUntilSomebodySaysIt() {
    Trim usual = new Trim(6, Trim.Known.USUAL);
    assertThat(usual.lacksAmount(stretch(WallState.CRUMBLING, 10.0), 10)).isTrue();
    assertThat(usual.lacksAmount(stretch(WallState.CRACKED, 6.0), 0)).isTrue();
    assertThat(usual.lacksAmount(stretch(WallState.CRUMBLING, 10.5), 10)).isFalse();
    assertThat(usual.lacksAmount(stretch(WallState.CRUMBLING, null), 10)).isFalse();
    assertThat(usual.lacksAmount(stretch(WallState.SOUND, 5.0), 10)).isFalse();
    assertThat(usual.lacksAmount(stretch(null, 5.0), 10)).isFalse();
    Trim said = new Trim(6, Trim.Known.SAID);
    assertThat(said.lacksAmount(stretch(WallState.CRUMBLING, 5.0), 10)).isFalse();
  }

  @Test
  void anAmountThatIsOnlyUsualLowersNothing() {
    WallStretch tall = stretch(WallState.SEPARATED, 30.0);
    assertThat(new Trim(6, Trim.Known.USUAL).off(List.of(tall))).containsExactly(tall);
    assertThat(new Trim(0, Trim.Known.SAID).off(List.of(tall))).containsExactly(tall);
  }
}
