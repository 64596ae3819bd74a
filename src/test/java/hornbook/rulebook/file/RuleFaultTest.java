package hornbook.rulebook.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Faults are told in the order of the files and their lines. */
class RuleFaultTest {
  private static RuleFault fault(String file, int line, String says) {
    return new RuleFault(file, line, "S001", says, "");
  }

  @Test
  void by_file_then_line_then_words() {
    List<RuleFault> inOrder =
        List.of(
            fault("balance/a.drl", 12, "b"),
            fault("shape/a.drl", 2, "c"),
            fault("shape/a.drl", 9, "b"),
            fault("shape/a.drl", 12, "a"),
            fault("shape/a.drl", 12, "b"));
    assertThat(Stream.of(4, 0, 3, 1, 2).map(inOrder::get).sorted().toList()).isEqualTo(inOrder);
  }
}
