package hornbook.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AnonymousTest {
  private static final String NAMED =
      """
      {'format': 'hornbook-entry/1', 'number': 3, 'horse': 'Tansy', 'by': 'Anna Smith',
       'previous': 'sha256:00', 'written': '2026-04-18T10:00:00Z',
       'chose': {'left-fore': 'glue-on'}, 'because': 'Mrs Miller asked', 'done': 'for Tansy',
       'outcome': 'ring 0555 010 010',
       'departures': [{'foot': 'left-fore', 'says': 'It puts a glued shoe first.'}],
       'assessment': {'horse': {'name': 'Tansy', 'ageYears': 7}, 'visit': {'date': '2026-04-18'},
         'feet': [{'limb': 'left-fore', 'lameness': 2}]},
       'advice': {'horse': 'Tansy', 'date': '2026-04-18', 'feet': []},
       'plan': {'despite': 'Mr Brown wants it', 'nextVisit': '2026-05-30', 'nextVisitDays': 42,
         'sheet': {'owner': [{'says': 'Next visit by 30 May 2026, says TANSY.'}]}},
       'ahead': {'left-fore': {'nextVisit': '2026-05-30', 'nextVisitDays': 42}},
       'rulebook': {'version': '1.0.0', 'practice': {'name': 'Upper Yard', 'by': 'the head farrier',
         'date': '2026-03-14', 'law': 'for licensed farriers', 'limits': [{'id': 'x', 'now': 3}],
         'emergency': [{'name': 'Duty vet', 'number': '0555'}]}},
       'photos': [{'file': 'photos/a.jpg', 'name': 'tansy.jpg'}]}
      """;

  @Test
  void no_name_no_day_and_no_own_words_are_left() {
    String told = Anonymous.of(Entries.of(NAMED)).content().toString();
    assertThat(told)
        .doesNotContainIgnoringCase("Tansy")
        .doesNotContain("Smith", "Miller", "Brown", "0555", "Upper Yard", "2026", "May", "photos/");
  }

  @Test
  void days_are_counted_from_the_visit_and_the_case_stays() {
    Entry entry = Anonymous.of(Entries.of(NAMED));
    assertThat(entry.horse()).isNull();
    assertThat(entry.done()).isEqualTo(Anonymous.LEFT_OUT);
    assertThat(entry.chose()).containsEntry("left-fore", "glue-on");
    assertThat(entry.ahead("left-fore").path("nextVisit").asText()).isEqualTo("day 42");
    assertThat(entry.ahead("left-fore").path("nextVisitDays").asInt()).isEqualTo(42);
    assertThat(entry.plan().at("/sheet/owner/0/says").asText())
        .isEqualTo("Next visit by day 42, says the horse.");
    assertThat(entry.assessment().at("/feet/0/lameness").asInt()).isEqualTo(2);
    assertThat(entry.assessment().at("/horse/ageYears").asInt()).isEqualTo(7);
    assertThat(entry.rulebook().at("/practice/limits/0/now").asInt()).isEqualTo(3);
  }

  /** A horse may be called like a word, or like a pattern. */
  @Test
  void a_name_is_taken_as_it_stands() {
    Entry entry =
        Anonymous.of(
            Entries.of(
                "{'horse': 'A.*', 'advice': {'feet': [{'says': 'A.* stands; Apple stays.'}]}}"));
    assertThat(entry.advice().at("/feet/0/says").asText())
        .isEqualTo("the horse stands; Apple stays.");
  }
}
