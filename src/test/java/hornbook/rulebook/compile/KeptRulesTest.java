package hornbook.rulebook.compile;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.file.RuleFiles;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rules that were read are kept for their user alone, for as long as they are used. */
class KeptRulesTest {
  private static final int KEPT = 12;

  @TempDir private Path folder;

  private KeptRules of(String version) throws IOException {
    Path rules = Files.createDirectories(folder.resolve("rules"));
    Files.writeString(rules.resolve(RuleFiles.HEAD), "version: " + version + "\n");
    return new KeptRules(folder.resolve("kept"), RuleFiles.read(rules, new ArrayList<>()));
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder.resolve("kept"))) {
      return all.toList();
    }
  }

  @Test
  void what_is_kept_comes_back_the_same_and_to_nobody_else() throws IOException {
    KeptRules kept = of("1.0.0");
    assertThat(kept.read()).isNull();
    kept.write(Shipped.BOOK);
    assertThat(kept.read()).isEqualTo(Shipped.BOOK);
    assertThat(of("1.0.1").read()).as("other rules").isNull();
    assertThat(mode(folder.resolve("kept"))).isEqualTo("rwx------");
    assertThat(files()).hasSize(1).allSatisfy(one -> assertThat(mode(one)).isEqualTo("rw-------"));
  }

  private static String mode(Path file) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
  }

  @Test
  void what_is_damaged_is_as_if_it_had_never_been_kept() throws IOException {
    KeptRules kept = of("1.0.0");
    kept.write(Shipped.BOOK);
    Path file = files().get(0);
    byte[] whole = Files.readAllBytes(file);
    for (int at : new int[] {0, 31, 32, whole.length / 2, whole.length - 1}) {
      byte[] damaged = whole.clone();
      damaged[at] ^= 1;
      Files.write(file, damaged);
      assertThat(kept.read()).as("byte %d turned over", at).isNull();
    }
    for (int length : new int[] {0, 31, 32, whole.length - 1}) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertThat(kept.read()).as("cut off after %d bytes", length).isNull();
    }
    kept.write(Shipped.BOOK);
    assertThat(kept.read()).isEqualTo(Shipped.BOOK);
  }

  @Test
  void what_was_not_used_for_longest_goes_first() throws IOException {
    List<Path> inOrder = new ArrayList<>();
    for (int one = 0; one < KEPT; one++) {
      of("1.0." + one).write(Shipped.BOOK);
      Path written = files().stream().filter(file -> !inOrder.contains(file)).findFirst().get();
      Files.setLastModifiedTime(written, FileTime.fromMillis(1_000_000L * (one + 1)));
      inOrder.add(written);
    }
    assertThat(of("1.0.0").read()).as("reading is using").isNotNull();
    of("2.0.0").write(Shipped.BOOK);
    assertThat(files()).hasSize(KEPT).contains(inOrder.get(0)).doesNotContain(inOrder.get(1));
    assertThat(files()).containsAll(inOrder.subList(2, KEPT));
  }
}
