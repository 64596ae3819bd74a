package hornbook.cli.record;

import hornbook.record.Entry;
import hornbook.record.NewEntry;
import java.time.Instant;

/** An entry taken over with some words said anew: assessment, advice and choice stay as given. */
final class CorrectedEntry {
  private CorrectedEntry() {}

  static NewEntry of(Entry old, RecordedWords said) {
    RecordedWords words =
        said.or(new RecordedWords(old.by(), old.because(), old.done(), old.outcome()));
    return new NewEntry(
        Instant.now(),
        words.by(),
        old.horse(),
        old.chose(),
        words.because(),
        old.departures(),
        words.done(),
        old.number(),
        old.assessment(),
        old.advice(),
        old.plan(),
        old.content().path("ahead"),
        words.outcome());
  }
}
