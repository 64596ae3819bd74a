package hornbook.report.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.report.Pages;
import hornbook.report.page.PageFrame;
import hornbook.report.page.Section;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class AdviceHtmlTest {
  /** Pages read already, by their advice. */
  private static final Map<Advice, Document> READ = new IdentityHashMap<>();

  private static Document page(Advice advice) throws Exception {
    if (!READ.containsKey(advice)) {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      String page = AdviceHtml.render(advice, Units.MM);
      READ.put(advice, builder.parse(new InputSource(new StringReader(page))));
    }
    return READ.get(advice);
  }

  private static List<Element> all(Document page, String name) {
    NodeList nodes = page.getElementsByTagName(name);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  @Test
  void is_well_formed_stands_alone_and_runs_no_script() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      Document page = page(one.getValue());
      assertThat(all(page, "script")).isEmpty();
      assertThat(all(page, "link")).isEmpty();
      assertThat(all(page, "img")).isEmpty();
      for (Element any : all(page, "*")) {
        for (int i = 0; i < any.getAttributes().getLength(); i++) {
          String attribute = any.getAttributes().item(i).getNodeName();
          assertThat(attribute).doesNotStartWith("on").isNotEqualTo("style");
        }
      }
      String style = all(page, "style").get(0).getTextContent();
      assertThat(style).doesNotContain("url(", "@import");
    }
  }

  @Test
  void every_link_leads_somewhere_and_every_id_is_one() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      Document page = page(one.getValue());
      Set<String> ids = new HashSet<>();
      for (Element any : all(page, "*")) {
        if (any.hasAttribute("id")) {
          assertThat(ids.add(any.getAttribute("id"))).as(any.getAttribute("id")).isTrue();
        }
      }
      for (Element link : all(page, "a")) {
        assertThat(link.getAttribute("href")).as(one.getKey()).startsWith("#");
        assertThat(ids).contains(link.getAttribute("href").substring(1));
      }
    }
  }

  @Test
  void headings_go_down_step_by_step() throws Exception {
    for (Advice advice : Pages.whole().values()) {
      Document page = page(advice);
      assertThat(all(page, "h1")).hasSize(1);
      assertThat(all(page, "h2")).hasSameSizeAs(advice.feet());
      int before = 0;
      for (Element any : all(page, "*")) {
        if (any.getTagName().matches("h[1-6]")) {
          int level = any.getTagName().charAt(1) - '0';
          assertThat(level).isLessThanOrEqualTo(before + 1);
          assertThat(any.getTextContent()).isNotBlank();
          before = level;
        }
      }
    }
  }

  /** On a telephone nobody has to unfold the vet, the verdict, the measures or the cautions. */
  @Test
  void what_comes_first_is_not_folded() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      Document page = page(one.getValue());
      List<String> open =
          List.of("referral", "referral-later", "provisional", "choice", "with-vet", "ruled-out");
      for (Element section : all(page, "section")) {
        String kind = section.getAttribute("class");
        NodeList folds = section.getElementsByTagName("details");
        boolean folded = folds.getLength() > 0;
        if (open.contains(kind)) {
          assertThat(folded).as("%s %s", one.getKey(), kind).isFalse();
        } else if (kind.equals("cautions")) {
          assertThat(((Element) folds.item(0)).hasAttribute("open")).isTrue();
        } else if (kind.equals("measures")) {
          assertThat(section.getElementsByTagName("tr").getLength()).isPositive();
        } else if (kind.equals("reasons") || kind.equals("found")) {
          assertThat(((Element) folds.item(0)).hasAttribute("open")).isFalse();
        }
      }
      for (Element fold : all(page, "details")) {
        assertThat(fold.getElementsByTagName("summary").getLength()).isEqualTo(1);
      }
    }
  }

  @Test
  void says_all_that_the_full_text_says() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      String page = words(page(one.getValue()).getDocumentElement().getTextContent());
      String anyCase = page.toLowerCase(Locale.ROOT);
      PageContext told = PageContext.of(one.getValue(), Units.MM, Detail.FULL);
      for (FootAdvice foot : one.getValue().feet()) {
        for (Section section : Page.of(told, foot).sections()) {
          assertThat(page).as(one.getKey()).contains(words(section.heading()));
          for (Section.Item item : section.items()) {
            assertThat(anyCase).contains(words(item.text()).toLowerCase(Locale.ROOT));
            assertThat(anyCase).contains(words(item.lead()).toLowerCase(Locale.ROOT));
            item.notes().forEach(note -> assertThat(page).contains(words(note)));
          }
        }
      }
      assertThat(page).contains(words(PageHead.SAFETY));
    }
  }

  private static final Pattern SPACES = Pattern.compile("\\s+");

  private static String words(String text) {
    return SPACES.matcher(text).replaceAll("");
  }

  @Test
  void takes_no_mark_up_from_a_file() throws Exception {
    String name = "<b onload=\\\"x()\\\">&amp; </style><script>alert(1)</script>";
    Advice advice =
        Pages.read(
            "format: hornbook-assessment/1\nhorse: {name: \""
                + name
                + "\"}\nfeet: [{limb: left-fore}]\n");
    Document page = page(advice);
    assertThat(all(page, "script")).isEmpty();
    assertThat(all(page, "b")).isEmpty();
    assertThat(all(page, "h1").get(0).getTextContent()).contains(name.replace("\\\"", "\""));
    assertThat(AdviceMarkdown.render(advice, Units.MM)).contains("\\<script\\>");
  }

  @Test
  void letters_stand_out_from_the_paper() throws Exception {
    String css;
    try (var in = PageFrame.class.getResourceAsStream("page.css")) {
      css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    String white = "#ffffff";
    for (String ink : List.of("ink", "soft", "alarm", "choice")) {
      assertThat(contrast(colour(css, ink), colour(css, "paper"))).as(ink).isGreaterThan(4.5);
      assertThat(contrast(colour(css, ink), white)).as(ink + " on white").isGreaterThan(4.5);
    }
  }

  private static String colour(String css, String name) {
    Matcher found = Pattern.compile("--" + name + ": (#[0-9a-f]{6});").matcher(css);
    assertThat(found.find()).as(name).isTrue();
    return found.group(1);
  }

  /** Contrast ratio by the formula of WCAG 2.2, success criterion 1.4.3. */
  private static double contrast(String one, String other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(String colour) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
