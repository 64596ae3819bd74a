package hornbook.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.record.VisitRecord;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.record.Entry;
import hornbook.record.History;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.drawing.Drawings;
import hornbook.report.handbook.Handbook;
import hornbook.report.record.EntryPage;
import hornbook.report.record.HistoryPage;
import hornbook.report.record.OwnerSheet;
import hornbook.report.record.RecordHtml;
import hornbook.report.record.RecordPage;
import hornbook.report.record.RecordPart;
import hornbook.report.record.VetLetter;
import hornbook.report.rules.ReviewPage;
import hornbook.report.sheet.PlanHtml;
import hornbook.report.words.Amounts;
import hornbook.rules.Shipped;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The PDF read back by a library of its own: what it says, and how it is made. */
class PdfPageTest {
  /** Pages about one horse with its drawings. */
  private static final Map<String, String> PAGES = pages();

  private static final Pattern KEPT =
      Pattern.compile("<section class=\"chapter\" id=\"(guide|topic-open|techniques|glossary)\"");

  /** Every other page there is as PDF. */
  private static final Map<String, String> OTHERS = others();

  /** What was put on paper already, by page and size. */
  private static final Map<List<Object>, byte[]> PRINTED = new HashMap<>();

  private static Map<String, String> pages() {
    Map<String, String> pages = new LinkedHashMap<>();
    try {
      Advice advice = advice("showjumper-torn-side");
      pages.put("advice", AdviceHtml.render(advice, Units.MM));
      PlanWishes despite = new PlanWishes(null, null, null, null, null, List.of(), "a trial");
      pages.put(
          "sheet",
          PlanHtml.render(
              PlanMaker.plan(advice, advice.feet().get(0), Technique.CAST_WRAP, despite),
              Units.INCH));
      return pages;
    } catch (IOException unreadable) {
      throw new ExceptionInInitializerError(unreadable);
    }
  }

  private static Map<String, String> others() {
    Map<String, String> pages = new LinkedHashMap<>();
    try {
      ReadResult.Good read = read("showjumper-torn-side");
      Advice advice = Shipped.ADVISOR.advise(read.assessment());
      Entry entry = new VisitRecord(read, advice).unwritten();
      List<RecordPart> drawn =
          List.of(
              RecordPart.drawn(
                  "Drawings",
                  List.of("Drawn from what was noted."),
                  Drawings.of(advice, advice.feet().get(0), new Amounts(Units.MM))));
      RecordPage shown = EntryPage.of(entry, 2, Units.MM, id -> id).with(drawn);
      pages.put("entry", RecordHtml.render(shown));
      History history = History.of("Tansy", List.of(entry, entry), Set.of(), null);
      pages.put("history", RecordHtml.render(HistoryPage.of(history, Units.MM, id -> id)));
      pages.put("vet", RecordHtml.render(VetLetter.of(entry, false, Units.MM, id -> id)));
      pages.put("owner", RecordHtml.render(OwnerSheet.of(entry, false, id -> id)));
      pages.put("questionnaire", ReviewPage.html(Shipped.BOOK));
      pages.put("handbook", shortened(Handbook.html(Shipped.BOOK, Map.of(), Units.MM)));
      return pages;
    } catch (IOException unreadable) {
      throw new ExceptionInInitializerError(unreadable);
    }
  }

  /** The handbook with one chapter of rules: as a whole it takes a minute to put on paper. */
  private static String shortened(String handbook) {
    return Stream.of(handbook.split("(?=<section class=\"chapter\")"))
        .filter(one -> !one.startsWith("<section") || KEPT.matcher(one).lookingAt())
        .collect(Collectors.joining());
  }

  private static ReadResult.Good read(String exercise) throws IOException {
    byte[] file = Files.readAllBytes(Shipped.EXERCISES.resolve(exercise + ".yaml"));
    return (ReadResult.Good) AssessmentReader.read(file, exercise, List.of());
  }

  private static Advice advice(String exercise) throws IOException {
    return Shipped.ADVISOR.advise(read(exercise).assessment());
  }

  private static PDDocument pdf(String html, Paper paper) throws IOException {
    List<Object> asked = List.of(html, paper);
    if (!PRINTED.containsKey(asked)) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      PdfPage.write(html, paper, out);
      PRINTED.put(asked, out.toByteArray());
    }
    return Loader.loadPDF(PRINTED.get(asked));
  }

  /** What the page says outside its drawings, without spaces. */
  private static String said(Node node) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      return node.getTextContent();
    }
    StringBuilder words = new StringBuilder();
    NodeList children = node.getChildNodes();
    boolean unseen = List.of("svg", "style", "nav", "title").contains(node.getNodeName());
    for (int i = 0; !unseen && i < children.getLength(); i++) {
      words.append(said(children.item(i)));
    }
    return words.toString();
  }

  private static String letters(String text) {
    return text.replaceAll("[\\s\u00a0•●]+", "").replaceAll("[\u2010\u2011]", "-");
  }

  /** The words of the PDF without what stands at the foot of each sheet, in order of reading. */
  private static String printed(PDDocument pdf) throws IOException {
    PDFTextStripper asSeen = new PDFTextStripper();
    asSeen.setSortByPosition(true);
    String text = asSeen.getText(pdf);
    return letters(
        text.replaceAll("(?m)^Hornbook: .*$", "").replaceAll("(?m)^.*Page \\d+ of \\d+\\s*$", ""));
  }

  @Test
  void says_word_for_word_what_the_page_says() throws Exception {
    for (Map.Entry<String, String> page : PAGES.entrySet()) {
      assertThat(compared(page.getKey(), page.getValue())).isGreaterThan(40);
    }
  }

  @Test
  void every_other_page_says_on_paper_word_for_word_what_it_says() throws Exception {
    for (Map.Entry<String, String> page : OTHERS.entrySet()) {
      assertThat(compared(page.getKey(), page.getValue())).as(page.getKey()).isGreaterThan(10);
    }
  }

  /** How many items and cells of a page were found in its PDF; all of them have to be. */
  private static int compared(String name, String page) throws Exception {
    Document html = PaperHtml.of(page);
    NodeList items = html.getElementsByTagName("*");
    try (PDDocument pdf = pdf(page, Paper.A4)) {
      String printed = printed(pdf);
      String asDrawn = letters(new PDFTextStripper().getText(pdf));
      // Its words may stand at the foot of each sheet as well, and there they are taken out.
      assertThat(asDrawn).as(name).contains(letters(said(html.getElementsByTagName("h1").item(0))));
      int compared = 0;
      for (int i = 0; i < items.getLength(); i++) {
        Element item = (Element) items.item(i);
        if (List.of("h2", "h3", "li", "p", "figcaption", "caption").contains(item.getTagName())
            && !inside(item, "nav")
            && !inside(item, "tr")) {
          assertThat(printed).as(name).contains(letters(ownWords(item)));
          compared++;
        }
        if (List.of("td", "th").contains(item.getTagName())) {
          for (String word : said(item).split("\\s+")) {
            // A long word may go on in the next line of its cell, between those of its neighbours.
            String inCell = letters(word);
            assertThat(printed.contains(inCell) ? printed : asDrawn).as(name).contains(inCell);
          }
          compared++;
        }
      }
      assertThat(printed).as(name).doesNotContain("#");
      return compared;
    }
  }

  /** The words of an item before any paragraph in it. */
  private static String ownWords(Element item) {
    StringBuilder words = new StringBuilder();
    for (Node child = item.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (!child.getNodeName().equals("p")) {
        words.append(said(child));
      }
    }
    return words.toString();
  }

  private static boolean inside(Node node, String name) {
    for (Node up = node; up != null; up = up.getParentNode()) {
      if (up.getNodeName().equals(name)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void each_sheet_has_horse_day_and_number_and_the_size_asked_for() throws Exception {
    for (String page : PAGES.values()) {
      for (Paper paper : Paper.values()) {
        try (PDDocument pdf = pdf(page, paper)) {
          int pages = pdf.getNumberOfPages();
          for (int i = 1; i <= pages; i++) {
            PDFTextStripper one = new PDFTextStripper();
            one.setStartPage(i);
            one.setEndPage(i);
            assertThat(one.getText(pdf))
                .contains("Hornbook: Tansy, 18 April 2026")
                .contains("Page " + i + " of " + pages);
            float wide = pdf.getPage(i - 1).getMediaBox().getWidth();
            assertThat(Math.round(wide / 72 * 25.4 * 10) / 10.0).isEqualTo(paper.width());
          }
        }
      }
    }
  }

  @Test
  void every_typeface_is_in_the_file() throws Exception {
    for (String page : PAGES.values()) {
      try (PDDocument pdf = pdf(page, Paper.A4)) {
        int faces = 0;
        for (PDPage sheet : pdf.getPages()) {
          for (COSName name : sheet.getResources().getFontNames()) {
            PDFont font = sheet.getResources().getFont(name);
            assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            faces++;
          }
        }
        assertThat(faces).isPositive();
      }
    }
  }

  @Test
  void is_tagged_in_a_language_with_headings_lists_tables_and_described_figures() throws Exception {
    for (String page : PAGES.values()) {
      try (PDDocument pdf = pdf(page, Paper.A4)) {
        assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        assertThat(pdf.getDocumentInformation().getTitle()).contains("Tansy");
        List<PDStructureElement> tags = new ArrayList<>();
        collect(pdf.getDocumentCatalog().getStructureTreeRoot(), tags);
        List<String> kinds = tags.stream().map(PDStructureElement::getStructureType).toList();
        assertThat(kinds).contains("H1", "H2", "H3", "L", "LI", "Table", "TH", "TD", "Figure");
        List<PDStructureElement> figures =
            tags.stream().filter(tag -> tag.getStructureType().equals("Figure")).toList();
        assertThat(figures).hasSizeGreaterThanOrEqualTo(4);
        figures.forEach(
            figure -> assertThat(figure.getAlternateDescription()).contains("left fore of Tansy"));
      }
    }
  }

  private static void collect(PDStructureNode node, List<PDStructureElement> tags) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        tags.add(element);
        collect(element, tags);
      }
    }
  }

  @Test
  void reads_nothing_beside_the_page(@TempDir Path folder) throws Exception {
    String outside = Files.createFile(folder.resolve("outside.png")).toUri().toString();
    String page =
        "<html lang=\"en-GB\"><head><title>A page</title><style/></head><body><h1>A page</h1><img"
            + " alt=\"x\" src=\""
            + outside
            + "\"/><img alt=\"y\" src=\"http://example.invalid/y.png\"/></body></html>";
    try (PDDocument pdf = pdf(page, Paper.A4)) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("A page");
      pdf.getPages().forEach(sheet -> assertThat(sheet.getResources().getXObjectNames()).isEmpty());
    }
  }
}
