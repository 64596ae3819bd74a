package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.report.pdf.Paper;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Pages as PDF: on which paper, and how they are made. */
public final class PdfOption {
  private static final String MEMORY = "-Xmx512m";
  private static final String PROGRAM = "hornbook.cli.start.PdfProcess";

  private final ArgumentValue<Paper> paper;
  private final OutputOption output;

  public PdfOption(Arguments arguments, OutputOption output) {
    this.output = output;
    paper =
        arguments.word(Paper.class, null, "the paper size of a PDF; a4 if not given", "--paper");
  }

  /** Refuses a paper where no PDF is asked for. */
  public void only(boolean asked) {
    if (paper.value() != null && !asked) {
      throw Failure.usage("--paper goes with --format pdf");
    }
  }

  /**
   * Puts a page on paper and delivers it.
   *
   * @throws Failure when it would go to a terminal, or cannot be made
   */
  public void deliver(String html, Surroundings surroundings) {
    if (output.toScreen() && surroundings.terminal()) {
      throw Failure.usage(
          "a PDF cannot be shown on this screen", "name a file for it: --output page.pdf");
    }
    output.deliver(made(html, surroundings), surroundings);
  }

  /** Delivers a page as it is, or puts it on paper first. */
  public void deliver(String page, boolean onPaper, Surroundings surroundings) {
    if (onPaper) {
      deliver(page, surroundings);
    } else {
      output.deliver(page, surroundings);
    }
  }

  private byte[] made(String html, Surroundings surroundings) {
    Path home = surroundings.home();
    if (home == null || !Files.isDirectory(home.resolve("lib/pdf"))) {
      throw Failure.of(
          ExitCode.FAULT,
          "the part of the program that makes PDF is missing: lib/pdf",
          "copy the whole folder of the program again, or use --format html and print from the"
              + " browser");
    }
    try {
      Process process = started(home);
      try (OutputStream in = process.getOutputStream()) {
        in.write(html.getBytes(StandardCharsets.UTF_8));
      }
      byte[] pdf = process.getInputStream().readAllBytes();
      if (process.waitFor() == 0) {
        return pdf;
      }
    } catch (IOException unfinished) {
      throw failed();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    throw failed();
  }

  private Process started(Path home) throws IOException {
    Path lib = home.resolve("lib");
    String classes = lib.resolve("hornbook.jar") + File.pathSeparator + lib.resolve("pdf/*");
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "@" + lib.resolve("java.options"),
            MEMORY,
            "-Djava.awt.headless=true",
            "-cp",
            classes,
            PROGRAM,
            (paper.value() == null ? Paper.A4 : paper.value()).name());
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private static Failure failed() {
    return Failure.of(
        ExitCode.FAULT,
        "the PDF could not be made",
        "use --format html and print from the browser");
  }
}
