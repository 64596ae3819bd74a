package hornbook.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.record.Anonymous;
import hornbook.record.Entry;
import hornbook.report.record.OwnerSheet;
import hornbook.report.record.RecordPage;
import hornbook.report.record.RecordText;
import hornbook.report.record.VetLetter;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The papers straight from every exercise, and from a foot with everything wrong with it. */
class PapersOfExercisesTest {
  private static final String EVERYTHING =
      """
      format: hornbook-assessment/1
      horse: {name: Tansy, ageYears: 8, bodyTemperature: 39.9 C, tetanusCover: lapsed,
        laminitisGrade: 3, unwillingToMove: true, shiftsWeight: true, colicSigns: true,
        unwell: true}
      visit: {date: 2026-03-14, shodDaysAgo: 2}
      feet:
        - limb: left-fore
          lameness: 5
          onset: sudden
          lameSinceShod: true
          shoeing: nailed
          cracks:
            - {place: quarter, side: medial, starts: coronet, depth: deep, bleeds: true, moves: true}
          signs: {digitalPulse: bounding, hoofHeat: true, testerPain: [nail, frog, sole],
            drainage: coronet, puncture: frog, objectInPlace: true, livingTissue: exposed,
            coronetGroove: true, soleBulge: true, swelling: above-fetlock,
            frogState: bleeding-growth, abscessesSameSpot: 3, whiteLineBulge: true,
            ringsDiverge: true, bloodAtNail: true, soleShape: dropped, cartilages: hard,
            stain: corn-seat, suddenEase: true}
        - limb: right-fore
          lameness: 0
          shoeing: nailed
      """;

  private static Map<String, Entry> entries() throws IOException {
    Map<String, Entry> entries = new LinkedHashMap<>();
    entries.put("everything", entry(EVERYTHING));
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      entries.put(file.getFileName().toString(), entry(Files.readString(file)));
    }
    return entries;
  }

  private static Entry entry(String yaml) {
    if (AssessmentReader.read(yaml.getBytes(), "a file", List.of())
        instanceof ReadResult.Good read) {
      Advice advice = Shipped.ADVISOR.advise(read.assessment());
      return new VisitRecord(read, advice).unwritten();
    }
    throw new IllegalArgumentException(yaml);
  }

  private static List<String> lines(RecordPage page) {
    return page.parts().stream().flatMap(part -> part.lines().stream()).toList();
  }

  private static List<JsonNode> calls(Entry entry) {
    List<JsonNode> calls = new ArrayList<>();
    for (JsonNode foot : entry.advice().path("feet")) {
      for (JsonNode referral : foot.path("referrals")) {
        if (!referral.path("urgency").asText().equals("mention")) {
          calls.add(referral);
        }
      }
    }
    return calls;
  }

  /** Ten lines whatever was found, and nothing that is to be done until the vet comes is lost. */
  @Test
  void the_owner_always_has_ten_lines_with_the_vet_first() throws IOException {
    int called = 0;
    for (Map.Entry<String, Entry> one : entries().entrySet()) {
      List<String> lines = lines(OwnerSheet.of(one.getValue(), false, id -> id));
      String all = String.join(" ", lines);
      assertThat(lines).as(one.getKey()).hasSize(OwnerSheet.LINES);
      List<JsonNode> calls = calls(one.getValue());
      called += calls.isEmpty() ? 0 : 1;
      boolean now = calls.stream().anyMatch(call -> call.path("urgency").asText().equals("now"));
      assertThat(lines.get(0).startsWith("Ring the vet NOW")).as(one.getKey()).isEqualTo(now);
      for (JsonNode call : calls) {
        for (String sentence : call.path("meanwhile").asText().split("(?<=[.!?])\\s+")) {
          if (!sentence.matches("(Call the vet now|Have the vet see it today)\\.")) {
            assertThat(all).as(one.getKey()).contains(sentence);
          }
        }
      }
    }
    assertThat(called).isGreaterThan(10);
  }

  /** The letter tells signs: no name of a disease, no guess, beside the names of its own rows. */
  @Test
  void the_letter_names_no_disease_and_tells_the_signs_of_every_call() throws IOException {
    Pattern concluded =
        Pattern.compile("(?i)laminitis|disease|infect|fracture|founder|suspect|likely|taken for");
    for (Map.Entry<String, Entry> one : entries().entrySet()) {
      RecordPage page = VetLetter.of(one.getValue(), false, Units.MM, id -> id);
      page.parts().stream()
          .filter(part -> !part.heading().endsWith("not looked at"))
          .flatMap(part -> part.lines().stream())
          .forEach(
              line ->
                  assertThat(concluded.matcher(line.replaceAll("(?i)laminitis grade", "")).find())
                      .as(one.getKey() + ": " + line)
                      .isFalse());
      List<JsonNode> calls = calls(one.getValue());
      String letter = String.join(" ", lines(page));
      calls.forEach(
          call ->
              assertThat(letter).as(one.getKey()).contains("[" + call.path("rule").asText() + "]"));
      assertThat(RecordText.render(page)).contains("It is not a diagnosis.");
    }
  }

  @Test
  void without_names_no_paper_has_horse_or_day() throws IOException {
    for (Map.Entry<String, Entry> one : entries().entrySet()) {
      Entry told = Anonymous.of(one.getValue());
      String papers =
          RecordText.render(VetLetter.of(told, false, Units.MM, id -> id))
              + RecordText.render(OwnerSheet.of(told, false, id -> id));
      assertThat(papers)
          .as(one.getKey())
          .doesNotContain(String.valueOf(one.getValue().horse()))
          .doesNotContainPattern("\\b20\\d\\d\\b");
    }
  }
}
