package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.form.AssessmentSchema;
import hornbook.rulebook.compile.CompileRules;
import hornbook.rulebook.load.ShippedRules;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever builds the program from the same sources gets the same files, byte by byte. */
class ReproducibleIT {
  /** The time that stands in the build for the time of every file. */
  private static final LocalDateTime BUILT = LocalDateTime.of(2026, 1, 1, 0, 0);

  private static final Path JAR = Program.HOME.resolve("lib/hornbook.jar");

  @TempDir private Path again;

  @Test
  void nothing_in_the_program_tells_when_it_was_built_nor_in_what_order() throws Exception {
    List<String> names = new ArrayList<>();
    try (JarFile jar = new JarFile(JAR.toFile())) {
      for (ZipEntry entry : Collections.list(jar.entries())) {
        assertThat(entry.getTimeLocal()).as(entry.getName()).isEqualTo(BUILT);
        names.add(entry.getName());
      }
    }
    assertThat(names).contains(ShippedRules.CATALOGUE).doesNotHaveDuplicates();
    assertThat(names).noneMatch(name -> name.startsWith("hornbook/rules/"));
  }

  @Test
  void rules_read_again_are_the_same_catalogue() throws Exception {
    Path rules = Program.HOME.resolve("rules");
    CompileRules.main(
        new String[] {
          rules.toString(), Files.createDirectories(again.resolve("hornbook/rulebook")) + "/../.."
        });
    try (JarFile jar = new JarFile(JAR.toFile());
        InputStream packed = jar.getInputStream(jar.getEntry(ShippedRules.CATALOGUE))) {
      assertThat(again.resolve(ShippedRules.CATALOGUE)).hasBinaryContent(packed.readAllBytes());
    }
  }

  @Test
  void the_schema_written_again_is_the_same() throws Exception {
    AssessmentSchema.main(new String[] {again.toString()});
    List<Path> written;
    try (java.util.stream.Stream<Path> files = Files.list(again)) {
      written = files.toList();
    }
    assertThat(written).isNotEmpty();
    for (Path file : written) {
      assertThat(Program.HOME.resolve("schema").resolve(file.getFileName()))
          .hasSameBinaryContentAs(file);
    }
  }

  @Test
  void no_compiler_is_shipped() throws Exception {
    try (java.util.stream.Stream<Path> files = Files.list(Program.HOME.resolve("lib"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .noneMatch(name -> name.matches("(ecj|javaparser|drools-(compiler|model-codegen)).*"));
    }
  }
}
