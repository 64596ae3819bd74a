package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of the README on a class, typed into a shell line by line. */
class ClassInTenMinutesIT {
  private static final Pattern LINES =
      Pattern.compile("## A class in ten minutes.*?\n```\n(.*?)\n```", Pattern.DOTALL);

  @Test
  void every_line_of_the_page_does_what_it_says(@TempDir Path folder) throws Exception {
    Matcher page = LINES.matcher(Files.readString(Path.of("README.md")));
    assertThat(page.find()).isTrue();
    List<String> lines = page.group(1).lines().toList();
    assertThat(lines).hasSizeGreaterThan(5);
    String script = "set -eu\nPATH='" + Program.HOME.resolve("bin") + "':$PATH\n" + page.group(1);
    Program.Run run = Program.here().from(folder).command(List.of("sh", "-c", script)).ended(0);
    assertThat(run.out())
        .contains("nail-in-the-frog: ", "A builder's nail stands", "3 of 3 answers marked");
    assertThat(folder.resolve("monday/nail-in-the-frog/ann.yaml")).isRegularFile();
    assertThat(folder.resolve("monday/nail-in-the-frog-key.html")).content().contains("Key:");
    assertThat(folder.resolve("marks.csv")).content().contains("Ann,0,20", "Cleo,0,20");
    assertThat(folder.resolve("feedback/ben.html")).content().contains("Not answered");
    assertThat(folder.resolve("class.txt")).content().contains("Marks: ", "TO TEACH NEXT");
    for (String pdf : List.of("sheet.pdf", "class.pdf")) {
      assertThat(Files.readAllBytes(folder.resolve(pdf))).as(pdf).startsWith("%PDF".getBytes());
    }
  }
}
