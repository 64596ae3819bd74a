package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawings, pages and PDF from the packaged program. */
class PicturesIT {
  private static final String FOOT =
      Program.EXERCISES.resolve("showjumper-torn-side.yaml").toString();
  private static final String PAIR =
      Program.EXERCISES.resolve("long-toe-under-run-heels.yaml").toString();

  @TempDir Path folder;

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
      assertThat(read.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      PDFTextStripper asSeen = new PDFTextStripper();
      asSeen.setSortByPosition(true);
      return asSeen.getText(read).replaceAll("\\s+", " ");
    }
  }

  @Test
  void one_drawing_comes_alone() {
    for (String picture : List.of("ground", "side", "wall", "growth")) {
      String advice =
          Program.run("assess", FOOT, "--format", "svg", "--picture", picture).done().out();
      assertThat(advice).startsWith("<svg ").endsWith("</svg>\n").contains("left fore of Tansy");
      String sheet =
          Program.run(
                  "plan", FOOT, "--technique", "glue-on", "--format", "svg", "--picture", picture)
              .done()
              .out();
      assertThat(sheet).startsWith("<svg ").contains("<title", "<desc");
    }
    assertThat(Program.run("assess", FOOT, "--format", "svg").done().out())
        .contains("The ground edge");
    assertThat(Program.run("plan", FOOT, "--technique", "glue-on", "--format", "svg").done().out())
        .contains("After the job, from the side");
  }

  @Test
  void a_drawing_is_of_one_foot_and_says_what_it_lacks() {
    assertThat(Program.run("assess", PAIR, "--format", "svg").refused(2).err())
        .contains("say which: --foot left-fore, --foot right-fore");
    Program.run("assess", PAIR, "--format", "svg", "--foot", "right-fore").done();
    assertThat(Program.run("assess", FOOT, FOOT, "--format", "svg").refused(2).err())
        .contains("one file at a time");
    String bare = "format: hornbook-assessment/1\nfeet: [{limb: left-fore}]\n";
    assertThat(Program.here().input(bare).with("assess", "-", "--format", "svg").refused(2).err())
        .contains("there is nothing to draw", "bearing length or width was not measured");
    assertThat(Program.run("assess", FOOT, "--picture", "wall").refused(2).err())
        .contains("--picture goes with --format svg");
    assertThat(Program.run("assess", FOOT, "--paper", "letter").refused(2).err())
        .contains("--paper goes with --format pdf");
  }

  @Test
  void the_job_sheet_is_a_page_with_the_foot_before_and_after() {
    String page =
        Program.run("plan", FOOT, "--technique", "glue-on", "--format", "html").done().out();
    assertThat(page)
        .startsWith("<!DOCTYPE html>")
        .contains("As measured, from the side", "After the job, from the side")
        .doesNotContain("<script", "http://www.w3.org/1999/xhtml", "url(http");
  }

  @Test
  void advice_and_sheet_come_as_pdf_with_horse_and_day() throws IOException {
    Program.run("assess", FOOT, "--format", "pdf", "-o", file("advice.pdf")).done();
    String advice = text(folder.resolve("advice.pdf"));
    assertThat(advice).contains("Hornbook advice: Tansy, 18 April 2026", "Page 1 of ", "[G005]");
    Program.run(
            "plan",
            FOOT,
            "--technique",
            "glue-on",
            "--format",
            "pdf",
            "--paper",
            "letter",
            "-o",
            file("sheet.pdf"))
        .done();
    assertThat(text(folder.resolve("sheet.pdf"))).contains("Hornbook job sheet", "SHOE");
    try (PDDocument sheet = Loader.loadPDF(folder.resolve("sheet.pdf").toFile())) {
      assertThat(sheet.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.map(Path::getFileName).map(Path::toString))
          .containsExactlyInAnyOrder("advice.pdf", "sheet.pdf");
    }
  }

  @Test
  void the_questionnaire_comes_as_pdf() throws IOException {
    Program.run("rules", "review", "--format", "pdf", "-o", file("review.pdf")).done();
    assertThat(text(folder.resolve("review.pdf"))).contains("Your value", "yes / no");
  }

  @Test
  void a_pipe_takes_the_bytes_of_a_pdf() {
    String out = Program.run("assess", FOOT, "--format", "pdf").done().out();
    assertThat(out).startsWith("%PDF-").endsWith("%%EOF\n");
  }

  @Test
  void without_its_part_for_pdf_the_program_says_so_and_does_all_else() throws IOException {
    Path copy = Program.copiedTo(folder.resolve("program"));
    try (Stream<Path> libraries = Files.list(copy.resolve("lib/pdf"))) {
      for (Path library : libraries.toList()) {
        Files.delete(library);
      }
    }
    Files.delete(copy.resolve("lib/pdf"));
    assertThat(Program.in(copy).with("assess", FOOT, "--format", "pdf").refused(70).err())
        .contains("lib/pdf", "--format html");
    Program.in(copy).with("assess", FOOT, "--brief").done();
  }

  @Test
  void nothing_but_a_pdf_loads_what_makes_one() throws IOException {
    Path loaded = folder.resolve("loaded.txt");
    Program.here()
        .environment("HORNBOOK_JAVA_OPTIONS", "-Xlog:class+load:file=" + loaded)
        .with("assess", FOOT, "--format", "html")
        .done();
    assertThat(Files.readString(loaded))
        .contains("hornbook.report.drawing")
        .doesNotContain("openhtmltopdf", "org.apache.pdfbox", "batik");
  }
}
