package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bytes that were kept from fuzzing, each of which once reached code no other did. */
class AnyBytesTest {
  /** Far more than any needs, on a machine that has other things to do. */
  private static final Duration LONGEST = Duration.ofSeconds(20);

  @Test
  void kept_files_are_read_or_refused() throws Exception {
    all("file", AnyBytes.AsFile::fuzzerTestOneInput);
  }

  @Test
  void kept_settings_are_made_or_refused() throws Exception {
    all("setting", AnyBytes.AsSetting::fuzzerTestOneInput);
  }

  @Test
  void kept_quantities_are_read_or_refused() throws Exception {
    all("quantity", AnyBytes.AsQuantity::fuzzerTestOneInput);
  }

  private static void all(String kind, Consumer<byte[]> target) throws Exception {
    List<Path> kept = kept(kind);
    assertThat(kept).hasSizeGreaterThan(10);
    for (Path file : kept) {
      byte[] bytes = Files.readAllBytes(file);
      assertTimeoutPreemptively(LONGEST, () -> target.accept(bytes), file.toString());
    }
  }

  private static List<Path> kept(String kind) throws IOException, URISyntaxException {
    Path folder = Path.of(AnyBytesTest.class.getResource("any-bytes/" + kind).toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
