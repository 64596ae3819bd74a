package hornbook.advice.fact;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What words the sheet of a foot takes from several fields, and what it says would settle them. */
class FactSheetsTest {
  /** A sound foot of a horse whose vet knows of it. */
  private static final String FOOT =
      """
      format: hornbook-assessment/1
      horse: {weight: 480 kg, work: sport}
      visit: {vet: informed}
      feet:
        - limb: left-fore
          lameness: 0
          deformity: none
          measures: {bearingLength: 130 mm, width: 124 mm}
          wall:
            - {side: medial, from: 0 mm, to: 60 mm, state: sound, thickness: 8 mm}
            - {side: medial, from: 60 mm, to: 171 mm, state: sound, thickness: 8 mm}
            - {side: lateral, from: 0 mm, to: 171 mm, state: sound, thickness: 8 mm}
          cracks: []
      """;

  /** With changes as {@code --set} takes them, or other cracks. */
  private static FactSheet sheet(String file, String... changes) {
    String text = file;
    List<Setting> set = new ArrayList<>();
    for (String change : changes) {
      if (change.startsWith("cracks: ")) {
        text = text.replace("cracks: []", change);
      } else {
        set.add(Setting.parse(change));
      }
    }
    ReadResult read = AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), "foot", set);
    return Shipped.ADVISOR.sheet(((ReadResult.Good) read).assessment(), 0);
  }

  @Test
  void what_a_vet_has_judged_holds_to_its_last_day_and_no_longer() {
    Limit days =
        Shipped.BOOK.limits().stream()
            .filter(one -> one.id().equals("judged.days"))
            .findFirst()
            .orElseThrow();
    int last = (int) days.value();
    assertThat(judgedWallLoss(last)).isEqualTo("yes");
    assertThat(judgedWallLoss(last + 1)).isEqualTo("no");
  }

  private static String judgedWallLoss(int ago) {
    FactSheet sheet =
        sheet(FOOT, "feet[0].care.vetJudged=[wall-loss]", "feet[0].care.vetSawDaysAgo=" + ago);
    assertThat(sheet.seen().get("judgedCrack").get(0).word()).isEqualTo("no");
    return sheet.seen().get("judgedWallLoss").get(0).word();
  }

  @Test
  void nobody_asks_what_a_vet_has_judged_where_there_is_nothing_to_judge() {
    assertThat(sheet(FOOT).unknown()).doesNotContainKey(FactSheet.JUDGED);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "feet[0].lameness=1",
        "feet[0].deformity=angular",
        "feet[0].wall[0].state=broken-away",
        "feet[0].wall[0].state=separated",
        "cracks: [{place: toe, depth: deep}]",
        "cracks: [{place: toe, depth: superficial, moves: true}]"
      })
  void one_thing_to_judge_is_enough_to_ask(String change) {
    assertThat(sheet(FOOT, change).unknown().get(FactSheet.JUDGED))
        .containsExactly("feet[0].care.vetJudged");
    assertThat(sheet(FOOT, change, "visit.vet=none").unknown()).doesNotContainKey(FactSheet.JUDGED);
    assertThat(
            sheet(FOOT, change, "feet[0].care.vetJudged=[lameness]")
                .unknown()
                .get(FactSheet.JUDGED))
        .containsExactly("feet[0].care.vetSawDaysAgo");
  }

  @Test
  void a_bounding_pulse_elsewhere_is_told_with_the_foot_that_has_it() {
    String others =
        FOOT
            + "  - {limb: right-fore, signs: {digitalPulse: normal}}\n"
            + "  - {limb: left-hind, signs: {digitalPulse: bounding}}\n";
    FactSheet sheet = sheet(others);
    assertThat(sheet.seen().get("otherPulse").get(0).word()).isEqualTo("bounding");
    assertThat(sheet.seen().get("otherPulse").get(0).field())
        .isEqualTo("feet[left-hind].signs.digitalPulse");
  }

  @Test
  void damp_is_asked_of_every_row_that_is_gone_or_separated_and_was_not_felt() {
    FactSheet sheet =
        sheet(
            FOOT,
            "feet[0].wall[0].state=separated",
            "feet[0].wall[1].state=separated",
            "feet[0].wall[1].moist=false");
    assertThat(sheet.unknown().get("defectMoist")).containsExactly("feet[0].wall[0].moist");
    FactSheet damp =
        sheet(
            FOOT,
            "feet[0].wall[0].state=separated",
            "feet[0].wall[1].state=separated",
            "feet[0].wall[1].damp=true");
    assertThat(damp.unknown().getOrDefault("defectMoist", List.of()))
        .doesNotContain("feet[0].wall[1].moist");
  }

  @Test
  void what_the_rows_leave_open_is_named_where_it_matters() {
    FactSheet sheet =
        sheet(FOOT, "feet[0].wall[1].thickness=unknown", "cracks: [{depth: superficial}]");
    assertThat(missing(sheet, ReadingKind.NAIL_SITES_MEDIAL))
        .contains("feet[0].wall[1].thickness", "feet[0].cracks[0].place", "feet[0].cracks[0].side")
        .doesNotContain("feet[0].wall[0].thickness", "feet[0].wall[1].height");
    FactSheet lost = sheet(FOOT, "feet[0].wall[0].state=broken-away");
    assertThat(missing(lost, ReadingKind.WEEKS_TO_NAILABLE))
        .contains("feet[0].wall[0].height")
        .doesNotContain("feet[0].wall[0].thickness", "feet[0].wall[0].from");
    FactSheet cut = sheet(FOOT, "feet[0].wall[0].to=unknown");
    assertThat(missing(cut, ReadingKind.SOUND_SHARE)).contains("feet[0].wall[0].to");
  }

  private static List<String> missing(FactSheet sheet, ReadingKind kind) {
    return sheet.unknown().getOrDefault(kind.id(), List.of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"side: medial", "from: 60 mm", "to: 171 mm", "state: sound"})
  void what_is_not_noted_of_a_stretch_is_missing_for_the_share(String noted) {
    String field = noted.substring(0, noted.indexOf(':'));
    String row = "{side: medial, from: 60 mm, to: 171 mm, state: sound, thickness: 8 mm}";
    assertThat(FOOT).contains(row);
    String file = FOOT.replace(row, row.replace(noted, field + ": unknown"));
    assertThat(sheet(file).unknown().get(ReadingKind.SOUND_SHARE.id()))
        .contains("feet[0].wall[1]." + field);
    assertThat(sheet(FOOT).unknown()).doesNotContainKey(ReadingKind.SOUND_SHARE.id());
  }
}
