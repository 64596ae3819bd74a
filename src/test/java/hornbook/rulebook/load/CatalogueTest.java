package hornbook.rulebook.load;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.read.RulebookReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A rule base that was written as a catalogue reads back as the one its files say. */
class CatalogueTest {
  @Test
  void nothing_of_the_shipped_rules_is_lost_or_changed() throws Exception {
    Rulebook fromFiles = RulebookReader.read(Path.of("rules")).book();
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    CatalogueWriter.write(fromFiles, written);
    Rulebook back = CatalogueReader.read(new ByteArrayInputStream(written.toByteArray()));
    assertThat(back).usingRecursiveComparison().isEqualTo(fromFiles);
    assertThat(back.rules().keySet()).containsExactlyElementsOf(fromFiles.rules().keySet());
    assertThat(ShippedRules.book()).isEqualTo(back);
  }
}
