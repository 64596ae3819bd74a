package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Where user data belongs: the XDG Base Directory Specification (version 0.8) for Linux, Apple's
 * File System Programming Guide for macOS, the known folder RoamingAppData for Windows.
 */
class BookPlaceTest {
  private static Path of(Map<String, String> environment, String system) {
    return BookPlace.of(environment, system, "/home/anna");
  }

  @Test
  void each_platform_has_its_place() {
    assertThat(of(Map.of(), "Linux"))
        .isEqualTo(Path.of("/home/anna/.local/share/hornbook/daybook"));
    assertThat(of(Map.of("XDG_DATA_HOME", "/data"), "Linux"))
        .isEqualTo(Path.of("/data/hornbook/daybook"));
    assertThat(of(Map.of(), "Mac OS X"))
        .isEqualTo(Path.of("/home/anna/Library/Application Support/hornbook/daybook"));
    assertThat(of(Map.of("APPDATA", "/roaming"), "Windows 11"))
        .isEqualTo(Path.of("/roaming/hornbook/daybook"));
    assertThat(of(Map.of(), "Windows 11"))
        .isEqualTo(Path.of("/home/anna/AppData/Roaming/hornbook/daybook"));
  }

  /** "If an implementation encounters a relative path ... it should consider the path invalid". */
  @Test
  void a_relative_place_is_left_aside() {
    assertThat(of(Map.of("XDG_DATA_HOME", "data"), "Linux"))
        .isEqualTo(Path.of("/home/anna/.local/share/hornbook/daybook"));
  }

  @Test
  void a_place_that_is_named_goes_before() {
    Map<String, String> named = Map.of("HORNBOOK_BOOK", "/books/yard", "XDG_DATA_HOME", "/data");
    assertThat(of(named, "Linux")).isEqualTo(Path.of("/books/yard"));
    assertThat(of(Map.of("HORNBOOK_BOOK", ""), "Mac OS X")).isAbsolute();
  }
}
