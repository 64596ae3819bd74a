package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.load.ShippedRules;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A foot an old book tells of, written down as one of today's assessments.
 *
 * @param least the least urgency it deserves today; empty where none
 */
record RecordedCase(String id, Optional<Urgency> least, Assessment assessment) {
  private static final Advisor ADVISOR = new Advisor(ShippedRules.load());

  /** All cases of a file beside the tests. */
  static Stream<RecordedCase> in(String file) {
    try (InputStream text = RecordedCase.class.getResourceAsStream("/outside/" + file)) {
      List<?> all = (List<?>) new Load(LoadSettings.builder().build()).loadFromInputStream(text);
      return all.stream().map(entry -> of((Map<?, ?>) entry));
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    }
  }

  private static RecordedCase of(Map<?, ?> entry) {
    String id = entry.get("id").toString();
    String least = entry.get("least").toString();
    String text = new Dump(DumpSettings.builder().build()).dumpToString(entry.get("assessment"));
    ReadResult read = AssessmentReader.read(text.getBytes(StandardCharsets.UTF_8), id, List.of());
    assertThat(read).as(id).isInstanceOf(ReadResult.Good.class);
    return new RecordedCase(
        id,
        Optional.of(least)
            .filter(word -> !word.equals("none"))
            .map(word -> Urgency.valueOf(word.toUpperCase(Locale.ROOT))),
        ((ReadResult.Good) read).assessment());
  }

  /** How soon the program calls the vet, by the most urgent of the feet. */
  Optional<Urgency> called() {
    return ADVISOR.advise(assessment).feet().stream()
        .map(FootAdvice::urgency)
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder());
  }

  @Override
  public String toString() {
    return id;
  }
}
