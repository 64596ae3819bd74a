package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The examples of the README are run, and show what the program says today. To write them anew:
 * {@code mvn -B verify -Dit.test=ReadmeIT -Dtest=VerdictsTest -Dreadme.write=true}.
 */
class ReadmeIT {
  private static final Path README = Path.of("README.md");
  private static final Pattern EXAMPLE =
      Pattern.compile("```console\n\\$ (hornbook [^\n]*)\n(.*?)```", Pattern.DOTALL);

  @TempDir private Path folder;

  @Test
  void every_example_shows_what_the_program_says() throws Exception {
    String written = Files.readString(README);
    StringBuilder fresh = new StringBuilder();
    Matcher example = EXAMPLE.matcher(written);
    int examples = 0;
    while (example.find()) {
      examples++;
      String block = "```console\n$ " + example.group(1) + "\n" + said(example.group(1)) + "```";
      example.appendReplacement(fresh, Matcher.quoteReplacement(block));
    }
    example.appendTail(fresh);
    assertThat(examples).isGreaterThanOrEqualTo(5);
    if (Boolean.getBoolean("readme.write")) {
      Files.writeString(README, fresh);
    }
    assertThat(Files.readString(README))
        .as("mvn -B verify -Dit.test=ReadmeIT -Dtest=VerdictsTest -Dreadme.write=true")
        .isEqualTo(fresh.toString());
  }

  /** Both streams of the packaged program, as a terminal would show them. */
  private String said(String command) throws IOException, InterruptedException {
    String program = System.getProperty("hornbook.program") + "/bin/hornbook";
    ProcessBuilder shell =
        new ProcessBuilder("sh", "-c", command.replaceFirst("hornbook", "'" + program + "'"));
    shell.redirectErrorStream(true);
    shell.environment().put("NO_COLOR", "1");
    shell.environment().put("TMPDIR", folder.toString());
    Process process = shell.start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said.replace(System.getProperty("hornbook.program"), "target/hornbook");
  }
}
