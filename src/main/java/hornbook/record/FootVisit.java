package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.WallStretch;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.foot.wall.WallGroup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A foot at one visit.
 *
 * @param visited the day, or null
 * @param findings the defects found, by their names
 * @param chose the technique chosen, or null
 */
public record FootVisit(
    Entry entry, LocalDate visited, Foot foot, List<String> findings, String chose) {

  /** The visits an entry holds; empty where its assessment can no longer be read. */
  static List<FootVisit> of(Entry entry) {
    byte[] bytes = AssessmentTree.bytes(entry.assessment());
    ReadResult read = AssessmentReader.read(bytes, "entry " + entry.number(), List.of());
    List<FootVisit> visits = new ArrayList<>();
    if (read instanceof ReadResult.Good good) {
      for (Foot foot : good.assessment().feet()) {
        String limb = foot.limb().word();
        visits.add(
            new FootVisit(
                entry,
                entry.visited(),
                foot,
                findings(entry.advice(), limb),
                entry.chose().get(limb)));
      }
    }
    return visits;
  }

  public Limb limb() {
    return foot.limb();
  }

  /** Stretches that are missing or separated. */
  public List<WallStretch> defects() {
    return foot.wall() == null
        ? List.of()
        : foot.wall().stream()
            .filter(one -> one.state() != null && WallGroup.of(one.state()).defect())
            .toList();
  }

  /** Height of the tallest defect, mm; null where none has a height. */
  public Double tallestDefect() {
    return defects().stream()
        .map(WallStretch::height)
        .filter(Objects::nonNull)
        .max(Double::compare)
        .orElse(null);
  }

  private static List<String> findings(JsonNode advice, String limb) {
    List<String> labels = new ArrayList<>();
    for (JsonNode foot : advice.path("feet")) {
      if (limb.equals(foot.path("limb").asText())) {
        for (JsonNode finding : foot.path("findings")) {
          if (finding.path("defect").asBoolean()) {
            labels.add(Entry.text(finding, "label"));
          }
        }
      }
    }
    return labels;
  }
}
