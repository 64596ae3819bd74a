package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The program starts from anywhere, by any way to it, on every Java that is new enough. */
class LauncherIT {
  private static final String FOAL = Program.exercise("foal-trim");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> every_java_from_17_on_gives_the_same_advice() throws IOException {
    String expected = Program.once("assess", FOAL).done().out();
    List<Path> found = Javas.found();
    assertThat(found).isNotEmpty();
    return found.stream()
        .map(
            java ->
                DynamicTest.dynamicTest(
                    java.toString(),
                    () -> {
                      Program program = Program.here().environment("JAVA_HOME", java.toString());
                      assertThat(program.with("assess", FOAL).done().out()).isEqualTo(expected);
                      program.with("rules", "show", "N003").done();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> every_java_makes_itself_an_archive_and_starts_from_it() throws IOException {
    return Javas.found().stream()
        .map(java -> DynamicTest.dynamicTest(java.toString(), () -> makesArchive(java)));
  }

  private void makesArchive(Path java) throws Exception {
    Path copy = soonTrained(Program.copiedTo(folder.resolve(java.getFileName().toString())));
    Program program =
        Program.in(copy)
            .environment("JAVA_HOME", java.toString())
            .environment("HORNBOOK_ARCHIVE", null);
    String first = program.with("assess", FOAL).done().out();
    Path archive = Javas.awaitArchive(copy.resolve("lib"));
    assertThat(archive).isNotEmptyFile();
    long made = Files.getLastModifiedTime(archive).toMillis();
    assertThat(program.with("assess", FOAL).done().out()).isEqualTo(first);
    assertThat(Files.getLastModifiedTime(archive).toMillis()).isEqualTo(made);
    long size = Files.size(archive);
    damage(archive, size - 4096, 64);
    heals(program, archive, size, first);
  }

  /** With no more teaching cases than the making of an archive needs. */
  private static Path soonTrained(Path copy) throws IOException {
    try (Stream<Path> cases = Files.list(copy.resolve("cases/exercises"))) {
      for (Path one : cases.filter(file -> !file.endsWith("showjumper-torn-side.yaml")).toList()) {
        Files.delete(one);
      }
    }
    return copy;
  }

  /** Cuts a file to a size, and turns over a bit of every byte in front of the new end. */
  private static void damage(Path file, long size, int bytes) throws IOException {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
      open.setLength(size);
      for (long at = size - bytes; at < size; at++) {
        open.seek(at);
        int was = open.read();
        open.seek(at);
        open.write(was ^ 1);
      }
    }
  }

  /** Answers as ever, leaves no trace of a crash, and has a whole archive again in the end. */
  private static void heals(Program program, Path archive, long size, String first)
      throws Exception {
    assertThat(program.with("assess", FOAL).done().out()).isEqualTo(first);
    Path note = Path.of(archive.toString().replaceAll("\\.(jsa|aot)$", ".of"));
    for (int look = 0; look < 1200; look++) {
      boolean whole =
          Files.exists(note)
              && Files.getLastModifiedTime(note).compareTo(Files.getLastModifiedTime(archive)) >= 0
              && Files.size(archive) > size / 2;
      if (whole) {
        break;
      }
      Thread.sleep(100);
    }
    assertThat(Files.size(archive)).isGreaterThan(size / 2);
    assertThat(program.with("assess", FOAL).done().out()).isEqualTo(first);
    try (Stream<Path> left = Files.list(Program.HOME)) {
      assertThat(left.map(one -> one.getFileName().toString()))
          .noneMatch(name -> name.startsWith("hs_err") || name.endsWith(".crash"));
    }
  }

  @Test
  void a_copy_in_a_folder_with_blanks_in_its_name() throws IOException {
    Path copy = Program.copiedTo(folder.resolve("my tools & 100%things/horn book"));
    assertThat(Program.in(copy).from(folder).with("assess", FOAL).done().out()).contains("Pipit");
  }

  @Test
  void a_copy_that_may_only_be_read_keeps_its_archive_in_the_cache_of_the_user() throws Exception {
    Path copy = soonTrained(Program.copiedTo(folder.resolve("read only, 100%top")));
    Path cache = folder.resolve("cache");
    try (Stream<Path> files = Files.walk(copy)) {
      for (Path file : files.filter(Files::isDirectory).toList()) {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r-xr-xr-x"));
      }
    }
    Program program =
        Program.in(copy)
            .environment("HORNBOOK_ARCHIVE", null)
            .environment("XDG_CACHE_HOME", cache.toString());
    String first = program.with("assess", FOAL).done().out();
    Path lib = copy.resolve("lib");
    Path where = Files.isWritable(lib) ? lib : cache.resolve("hornbook");
    assertThat(Javas.awaitArchive(where)).isNotEmptyFile();
    assertThat(program.with("assess", FOAL).done().out()).isEqualTo(first);
  }

  @Test
  void through_links_and_from_another_folder() throws IOException {
    Path link =
        Files.createSymbolicLink(folder.resolve("one"), Program.HOME.resolve("bin/hornbook"));
    Path again = Files.createSymbolicLink(folder.resolve("two"), link.getFileName());
    Path file = Files.writeString(folder.resolve("plain.yaml"), Written.PLAIN);
    Program.Run run =
        Program.here()
            .from(folder)
            .command(List.of(again.toString(), "assess", file.getFileName().toString()));
    assertThat(run.done().out()).contains("Bracken");
    Files.delete(again);
    Files.delete(link);
  }

  @Test
  void not_from_a_folder_whose_name_would_part_the_class_path() throws IOException {
    Path copy = Program.copiedTo(folder.resolve("tools: own"));
    assertThat(Program.in(copy).with("--help").refused(69).err()).contains("a colon in its name");
  }

  @Test
  void by_name_from_its_own_folder() {
    Program.Run run =
        Program.here()
            .from(Program.HOME.resolve("bin"))
            .command(List.of("sh", "hornbook", "--version"));
    assertThat(run.done().out()).startsWith("hornbook ");
  }

  @Test
  void file_names_may_be_in_any_script_whatever_the_language_of_the_shell() throws IOException {
    Path file = Files.writeString(folder.resolve("H\u00f8vding \u99ac.yaml"), Written.PLAIN);
    Program.Run run =
        Program.here().environment("LC_ALL", "C").with("assess", file.toString()).done();
    assertThat(run.out()).contains("Bracken");
  }

  @Test
  void what_is_set_for_other_java_programs_is_not_heard() {
    Program.Run run =
        Program.here()
            .environment("JAVA_TOOL_OPTIONS", "-Xmx1g")
            .environment("JDK_JAVA_OPTIONS", "-ea")
            .with("--version");
    assertThat(run.done().out()).startsWith("hornbook ");
  }

  @Test
  void with_too_little_memory_it_says_so() {
    Program program = Program.here().environment("HORNBOOK_JAVA_OPTIONS", "-Xmx12m");
    assertThat(program.with("rules", "handbook").refused(70).err())
        .contains("too little memory for");
  }

  @Test
  void without_java_it_says_so() {
    Path tools = folder.resolve("tools");
    Program.Run run =
        Program.here()
            .environment("JAVA_HOME", null)
            .environment("PATH", tools.toString())
            .command(List.of("/bin/sh", Program.HOME.resolve("bin/hornbook").toString(), "--help"));
    assertThat(run.refused(69).err()).contains("Java is not installed", "17");
  }

  @Test
  void a_java_that_is_not_there_or_too_old_is_named() throws IOException {
    Path nowhere = folder.resolve("nowhere");
    assertThat(on(nowhere).refused(69).err()).contains("JAVA_HOME is " + nowhere);
    Path old = Files.createDirectories(folder.resolve("old/bin")).getParent();
    Files.writeString(old.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n");
    Path java = Files.writeString(old.resolve("bin/java"), "#!/bin/sh\nexit 1\n");
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(on(old).refused(69).err()).contains("Java 17 or newer", "is Java 11.0.2");
  }

  private static Program.Run on(Path java) {
    return Program.here().environment("JAVA_HOME", java.toString()).with("--help");
  }

  @Test
  void colour_is_for_terminals_only() {
    assertThat(Program.once("assess", FOAL).done().out()).doesNotContain("\u001b");
    Program.Run onTerminal = onTerminal("");
    assertThat(onTerminal.out()).contains("\u001b[");
    assertThat(onTerminal("NO_COLOR=1 ").out()).contains("Pipit").doesNotContain("\u001b[");
    assertThat(onTerminal("TERM=dumb ").out()).contains("Pipit").doesNotContain("\u001b[");
  }

  /** Within {@code script}, which lends its commands a terminal. */
  private static Program.Run onTerminal(String set) {
    String line = set + "'" + Program.HOME.resolve("bin/hornbook") + "' assess '" + FOAL + "'";
    return Program.here()
        .environment("TERM", "xterm")
        .environment("NO_COLOR", null)
        .command(List.of("script", "-qec", line, "/dev/null"))
        .ended(0);
  }

  @Test
  void a_program_that_is_not_whole_is_told_as_its_own_fault() throws IOException {
    Path copy = Program.copiedTo(folder.resolve("broken"));
    try (Stream<Path> files = Files.list(copy.resolve("lib"))) {
      for (Path jar : files.filter(one -> one.toString().contains("drools-core")).toList()) {
        Files.delete(jar);
      }
    }
    Program.Run run = Program.in(copy).with("assess", FOAL).refused(70);
    assertThat(run.err()).contains("this is not your mistake", "HORNBOOK_TRACE=1");
    Program.Run traced =
        Program.in(copy).environment("HORNBOOK_TRACE", "1").with("assess", FOAL).refused(70);
    String file = traced.err().replaceAll("(?s).*written to (\\S+)\n.*", "$1");
    assertThat(Path.of(file)).content().contains("hornbook.cli");
    Files.delete(Path.of(file));
  }
}
