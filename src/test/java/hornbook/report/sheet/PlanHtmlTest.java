package hornbook.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.Pages;
import hornbook.report.advice.PageHead;
import hornbook.report.page.PageFrame;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PlanHtmlTest {
  private static final PlanWishes DESPITE =
      new PlanWishes(null, null, null, null, null, List.of(), "the <vet> asks & says \"so\"");

  private static final DocumentBuilder BUILDER = builder();

  private static DocumentBuilder builder() {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder;
    } catch (ParserConfigurationException broken) {
      throw new ExceptionInInitializerError(broken);
    }
  }

  private static List<Plan> plans() {
    List<Plan> plans = new ArrayList<>();
    for (Advice advice : Pages.whole().values()) {
      for (FootAdvice foot : advice.feet()) {
        for (Technique technique : Technique.values()) {
          plans.add(PlanMaker.plan(advice, foot, technique, DESPITE));
        }
      }
    }
    return plans;
  }

  private static Document page(Plan plan, Units units) throws Exception {
    return BUILDER.parse(new InputSource(new StringReader(PlanHtml.render(plan, units))));
  }

  private static List<Element> all(Document page, String name) {
    NodeList nodes = page.getElementsByTagName(name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  /** Without the spaces, which pages set each in its own way. */
  private static String words(String text) {
    StringBuilder words = new StringBuilder(text.length());
    for (int at = 0; at < text.length(); at++) {
      char sign = text.charAt(at);
      if (sign != ' ' && (sign < '\t' || sign > '\r')) {
        words.append(sign);
      }
    }
    return words.toString();
  }

  private static String lower(String text) {
    return words(text).toLowerCase(Locale.ROOT);
  }

  /** Sheets are told in millimetres and in inches in turn. */
  @Test
  void every_sheet_says_all_stands_alone_runs_no_script_and_describes_its_drawings()
      throws Exception {
    int number = 0;
    for (Plan plan : plans()) {
      Units units = Units.values()[number % Units.values().length];
      Document page = page(plan, units);
      saysAll(plan, units, page);
      standsAlone(page);
      describesItsDrawings(page);
      drawsWhatMayBeDone(plan, page);
      number++;
    }
  }

  private static void saysAll(Plan plan, Units units, Document page) {
    String said = words(page.getDocumentElement().getTextContent());
    assertThat(said).contains(words(PlanPage.title(plan))).contains(words(PageHead.SAFETY));
    String anyCase = said.toLowerCase(Locale.ROOT);
    for (PlanSection section : PlanPage.of(plan, units)) {
      assertThat(said).contains(words(section.heading()));
      for (PlanSection.Block block : section.blocks()) {
        if (block instanceof PlanSection.Lines lines) {
          lines.lines().forEach(line -> assertThat(anyCase).contains(lower(line)));
        } else if (block instanceof PlanSection.Table table) {
          table
              .rows()
              .forEach(row -> row.forEach(cell -> assertThat(anyCase).contains(lower(cell))));
        }
      }
    }
  }

  private static void standsAlone(Document page) {
    assertThat(all(page, "script")).isEmpty();
    assertThat(all(page, "img")).isEmpty();
    assertThat(all(page, "link")).isEmpty();
    assertThat(all(page, "vet")).as("what was typed is no mark-up").isEmpty();
  }

  private static void describesItsDrawings(Document page) {
    Set<String> ids = new HashSet<>();
    for (Element any : all(page, "*")) {
      if (any.hasAttribute("id")) {
        assertThat(ids.add(any.getAttribute("id"))).as(any.getAttribute("id")).isTrue();
      }
    }
    for (Element drawing : all(page, "svg")) {
      assertThat(ids)
          .contains(
              drawing.getAttribute("aria-labelledby"), drawing.getAttribute("aria-describedby"));
    }
  }

  private static void drawsWhatMayBeDone(Plan plan, Document page) {
    boolean firstAid = Technique.of(plan.judged().id()).firstAid();
    if (plan.workable() && firstAid) {
      assertThat(page.getDocumentElement().getTextContent())
          .contains("WHAT TO DO")
          .doesNotContain("WHAT IT DOES TO THE FOOT");
    } else if (plan.workable()) {
      assertThat(page.getDocumentElement().getTextContent()).contains("WHAT IT DOES TO THE FOOT");
    } else {
      assertThat(all(page, "svg")).as("nothing is drawn while the vet is awaited").isEmpty();
    }
  }

  @Test
  void horse_and_day_stand_at_the_foot_of_each_sheet_whatever_the_horse_is_called() {
    assertThat(PageFrame.quoted("Tansy")).isEqualTo("Tansy");
    String nasty = PageFrame.quoted("\"} </style> \\ é 馬");
    assertThat(nasty).doesNotContain("\"", "<", "}", "/", " ").matches("[\\x20-\\x7e]*");
    assertThat(nasty).contains("\\000022", "\\00007d", "\\0099ac");
  }
}
