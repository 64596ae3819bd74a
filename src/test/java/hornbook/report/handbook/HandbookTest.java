package hornbook.report.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.field.Fields;
import hornbook.assessment.quantity.Units;
import hornbook.report.PracticePagesTest;
import hornbook.report.words.Phrases;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.FiredCase;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The handbook tells the whole rule base, in both forms alike, and leads nowhere that is not. */
class HandbookTest {
  private static final Rulebook BOOK = Shipped.BOOK;

  private static Map<String, FiredCase> cases;
  private static String html;
  private static String markdown;
  private static Document page;

  @BeforeAll
  static void write() throws Exception {
    cases = cases(Shipped.RULES);
    html = Handbook.html(BOOK, cases, Units.MM);
    markdown = Handbook.markdown(BOOK, cases, Units.MM);
    // It would not be read at all were it not well-formed.
    page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(html)));
  }

  private static Map<String, FiredCase> cases(LoadedRules rules) throws Exception {
    return FiredCase.all(new Advisor(rules), CaseLibrary.read(Path.of("cases")));
  }

  private static String flowing(String text) {
    return text.replace("\\", "").replace("*", "").replaceAll("\\s+", " ");
  }

  private static String plain(String text) {
    return flowing(new Phrases(BOOK, Units.MM).plain(text));
  }

  /** What stands under a rule in Markdown. */
  private static String entry(String whole, String id) {
    int from = whole.indexOf("<a id=\"" + id + "\">");
    assertThat(from).as(id).isNotNegative();
    int next = whole.indexOf("\n##", from);
    return flowing(whole.substring(from, next));
  }

  private static List<Element> elements(String name) {
    List<Element> elements = new ArrayList<>();
    NodeList all = page.getElementsByTagName(name);
    for (int at = 0; at < all.getLength(); at++) {
      elements.add((Element) all.item(at));
    }
    return elements;
  }

  @Test
  void every_rule_is_told_with_its_case_and_near_miss() {
    assertThat(cases.keySet()).isEqualTo(BOOK.rules().keySet());
    for (RuleEntry rule : BOOK.rules().values()) {
      FiredCase fired = cases.get(rule.id());
      assertThat(fired.says()).as(rule.id() + " fires on its case").isNotNull();
      assertThat(fired.silenced()).as(rule.id() + " is silent on its near-miss").isTrue();
      String told = entry(markdown, rule.id());
      String ground =
          rule.weakest(
                  BOOK.limits().stream().filter(one -> rule.limits().anyMatch(one.id()::equals)))
              .word();
      assertThat(told)
          .contains(rule.title(), plain(rule.why()), plain(rule.silent()))
          .contains("Example case " + fired.example().title() + ".")
          .contains("Then ", "Applies if ", "Basis " + ground);
      String path = fired.example().nearMiss().replaceFirst("=.*", "");
      String field = Fields.at(path.strip()).label();
      assertThat(told.substring(told.indexOf("Near-miss ")).toLowerCase(Locale.ROOT))
          .contains(field.toLowerCase(Locale.ROOT) + ": ", ", in place of ");
      rule.limits().forEach(id -> assertThat(told).contains("(#limit-" + id + ")"));
      rule.text().sources().stream()
          .filter(key -> !key.equals(ground))
          .forEach(key -> assertThat(told).contains("(#source-" + key + ")"));
      rule.text().dissents().forEach(id -> assertThat(told).contains("(#" + id + ")"));
    }
  }

  @Test
  void a_rule_reads_as_the_trade_would_say_it() {
    assertThat(entry(markdown, "N003"))
        .contains("room for nail sites, weaker branch nails, 2 needed")
        .contains("Then rules out a nailed shoe.")
        .contains("Applies if nail sites, weaker branch: less than 2")
        .contains("at least 2 (published, Fleming 1869: p. 668: five nails in front")
        .contains("outer wall from 0 mm to 40 mm, broken away")
        .contains(
            "It then says: “Not enough sound wall for nails in the weaker branch: room for 1 nail, 2 needed")
        .contains("Stretch 2 of the wall: state of the wall: sound, in place of broken away.");
  }

  @Test
  void limits_findings_techniques_sources_and_words_are_all_there() {
    for (String form : List.of(markdown, html)) {
      BOOK.limits().stream()
          .map(Limit::id)
          .forEach(id -> assertThat(form).contains("id=\"limit-" + id + "\""));
      BOOK.findings().keySet().forEach(id -> assertThat(form).contains("\"finding-" + id + "\""));
      BOOK.sources().keySet().forEach(key -> assertThat(form).contains("\"source-" + key + "\""));
      BOOK.techniques().forEach(one -> assertThat(form).contains("\"way-" + one.id() + "\""));
      BOOK.supports().forEach(one -> assertThat(form).contains("\"way-" + one.id() + "\""));
      BOOK.rules().keySet().forEach(id -> assertThat(form).contains("id=\"" + id + "\""));
    }
    String words = flowing(markdown.substring(markdown.indexOf("<a id=\"glossary\">")));
    BOOK.glossary()
        .forEach(term -> assertThat(words).contains(term.word() + " " + flowing(term.says())));
    String limits = flowing(markdown.substring(markdown.indexOf("<a id=\"limits\">")));
    for (Limit limit : BOOK.limits()) {
      assertThat(limits).contains(", " + limit.id(), flowing(limit.label()));
      limit
          .disputes()
          .forEach(other -> assertThat(limits).contains("(#source-" + limit.source() + ")"));
    }
    String whole = flowing(markdown);
    BOOK.instructions().values().stream()
        .map(one -> flowing(one.says().replaceAll("[{}]", "")))
        .forEach(says -> assertThat(whole).contains(says));
  }

  @Test
  void a_word_of_the_trade_leads_to_the_rules_that_speak_of_it() {
    String index = markdown.substring(markdown.indexOf("<a id=\"index\">"));
    BOOK.glossary().forEach(term -> assertThat(index).contains("\n- **" + term.word() + "** "));
    String poultice = index.substring(index.indexOf("**poultice**"));
    String line = poultice.substring(0, poultice.indexOf('\n'));
    List<String> expected =
        BOOK.rules().values().stream()
            .filter(rule -> ("" + rule.text().meanwhile()).contains("poultice"))
            .map(RuleEntry::id)
            .toList();
    assertThat(expected).isNotEmpty();
    assertThat(line).contains(expected);
  }

  @Test
  void every_link_leads_to_one_place_of_the_book() {
    Pattern href = Pattern.compile("href=\"#([^\"]*)\"|\\]\\(#([^)]*)\\)");
    Pattern id = Pattern.compile(" id=\"([^\"]*)\"");
    for (String form : List.of(markdown, html)) {
      List<String> anchors = id.matcher(form).results().map(one -> one.group(1)).toList();
      assertThat(anchors).doesNotHaveDuplicates().hasSizeGreaterThan(700);
      Set<String> targets = new TreeSet<>();
      href.matcher(form).results().map(HandbookTest::target).forEach(targets::add);
      assertThat(targets).hasSizeGreaterThan(700);
      assertThat(anchors).containsAll(targets);
    }
  }

  private static String target(MatchResult link) {
    return link.group(1) == null ? link.group(2) : link.group(1);
  }

  @Test
  void no_hole_is_left_and_no_word_of_the_machinery_shows() {
    assertThat(html).doesNotContain("&lt;", "&gt;", "null");
    assertThat(html.substring(html.indexOf("</style>"))).doesNotContain("{", "}", "$");
    assertThat(markdown).doesNotContain("{", "}", "$", "\\<", "null");
    assertThat(html + markdown).doesNotContain("Reading(", "Seen(", "drools", "hornbook.rule");
  }

  @Test
  void the_page_needs_nothing_beside_it() {
    assertThat(html).startsWith("<!DOCTYPE html>").doesNotContain("<script", "http", "url(");
    for (String element : List.of("img", "link", "script", "iframe")) {
      assertThat(elements(element)).isEmpty();
    }
  }

  @Test
  void the_page_can_be_heard_and_walked_by_its_headings() {
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en-GB");
    assertThat(elements("h1")).hasSize(1);
    int before = 0;
    List<MatchResult> headings = Pattern.compile("<h([1-6])").matcher(html).results().toList();
    for (MatchResult heading : headings) {
      int level = Integer.parseInt(heading.group(1));
      assertThat(level).isLessThanOrEqualTo(before + 1);
      before = level;
    }
    assertThat(elements("main")).hasSize(1);
    assertThat(elements("nav")).allMatch(nav -> nav.hasAttribute("aria-labelledby"));
    assertThat(elements("th")).isNotEmpty().allMatch(head -> head.hasAttribute("scope"));
    assertThat(elements("caption")).hasSameSizeAs(elements("table"));
    assertThat(elements("a")).allMatch(link -> !link.getTextContent().isBlank());
  }

  @Test
  void both_forms_say_the_same_word_for_word() {
    String body =
        html.substring(html.indexOf("<header>"))
            .replaceAll("<a class=\"back\"[^>]*>[^<]*</a>", "")
            .replaceAll("</?(a|em|strong|span)( [^>]*)?>", "")
            .replaceAll("<[^>]*>", " ")
            .replace("&quot;", "\"")
            .replace("&amp;", "&");
    String plain =
        markdown
            .replaceAll("(?m)^(\\d+\\. |\\| --- .*$)", "")
            .replaceAll("\\]\\(#[^)]*\\)", "")
            .replaceAll("<a id=[^>]*></a>", "")
            .replaceAll("(?<!\\\\)\\*", "");
    assertThat(words(body)).isEqualTo(words(plain)).hasSizeGreaterThan(40_000);
  }

  private static List<String> words(String text) {
    return Pattern.compile("[\\p{L}\\p{N}]+")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .toList();
  }

  @Test
  void it_is_told_in_inches_on_request() {
    String inches = Handbook.markdown(BOOK, cases, Units.INCH);
    assertThat(inches).contains(" in ").doesNotContainPattern("\\d mm\\b");
    assertThat(entry(inches, "N003")).contains("toe to widest part 1 in");
  }

  @Test
  void a_local_practice_is_printed_on_it() throws Exception {
    LoadedRules local = PracticePagesTest.rules();
    String ours = Handbook.markdown(local.book(), cases(local), Units.MM);
    String whole = flowing(ours);
    assertThat(whole)
        .contains("As the local practice of Upper Yard has it.")
        .contains("The local practice", "Shoeing is reserved to licensed farriers here.")
        .contains("Duty vet 0555 010 010", "heavy going tears two nails out", "LESS SAFE: ")
        .contains("Here: Bring the nails a size down.", "Here Only in the closed shed.");
    assertThat(entry(ours, "N003")).contains("nails, 3 needed", "at least 3", "in place of 2");
    assertThat(entry(ours, "N005"))
        .contains("Under the local practice")
        .doesNotContain("It then says");
    assertThat(flowing(markdown)).doesNotContain("local practice of Upper Yard");
  }
}
