package hornbook.rulebook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleFilesTest {
  @TempDir Path folder;

  @Test
  void a_file_too_large_for_rules_is_a_fault_and_not_read() throws IOException {
    Files.writeString(folder.resolve(RuleFiles.HEAD), "version: 1.0.0\n");
    try (RandomAccessFile hollow =
        new RandomAccessFile(folder.resolve("hollow.yaml").toFile(), "rw")) {
      hollow.setLength(3L << 30);
    }
    List<RuleFault> faults = new ArrayList<>();
    RuleFiles files = RuleFiles.read(folder, faults);
    assertThat(faults).extracting(RuleFault::file).containsExactly("hollow.yaml");
    assertThat(faults.get(0).says()).contains("more than 4194304 bytes");
    assertThat(files.texts()).containsOnlyKeys(RuleFiles.HEAD);
  }
}
