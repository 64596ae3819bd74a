package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.report.drawing.FootDrawing;
import hornbook.report.drawing.FootMap;
import hornbook.report.drawing.WallLegend;
import hornbook.report.page.Markup;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The advice on one foot as part of a page; a rule named links to the reason it gave. */
final class HtmlFoot {
  private static final Pattern RULE = Pattern.compile("\\b[A-Z]\\d{3}\\b");

  private final PageContext told;
  private final FootAdvice foot;
  private final Markup page;
  private final String id;
  private final Set<String> reasons = new HashSet<>();

  HtmlFoot(PageContext told, FootAdvice foot, Markup page) {
    this.told = told;
    this.foot = foot;
    this.page = page;
    this.id = foot.limb().word();
  }

  void write() {
    Page sections = Page.of(told, foot);
    for (Section section : sections.sections()) {
      if (section.kind() == Kind.REASONS) {
        section.items().forEach(item -> reasons.add(item.rule()));
      }
    }
    page.open("article", "id", id).line();
    page.element("h2", Sentence.capital(sections.foot())).line();
    boolean drawn = false;
    for (Section section : sections.sections()) {
      if (section.kind() == Kind.FOUND) {
        drawing();
        drawn = true;
      }
      section(section);
    }
    if (!drawn) {
      drawing();
    }
    page.close("article").line();
  }

  private void section(Section section) {
    String kind = section.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    page.open("section", "class", kind).line();
    page.element("h3", section.heading()).line();
    if (section.kind() == Kind.MEASURES) {
      measures(section.items());
    } else if (section.inOne()) {
      page.element("p", Sentence.capital(section.items().get(0).line())).line();
    } else {
      page.open("ul").line();
      section.items().forEach(item -> item(section, item));
      page.close("ul").line();
    }
    page.close("section").line();
  }

  private void item(Section section, Item item) {
    if (section.kind() == Kind.REASONS) {
      page.open("li", "id", id + "-" + item.rule());
    } else {
      page.open("li");
    }
    if (!item.lead().isEmpty()) {
      String lead = Sentence.capital(item.lead()) + (item.text().isEmpty() ? "" : ":");
      page.element("strong", lead).text(" ");
    }
    Item rest = new Item("", item.text(), item.notes(), item.rule());
    linked(item.lead().isEmpty() ? Sentence.capital(rest.line()) : rest.line());
    for (String note : item.notes()) {
      page.open("p");
      linked(note);
      page.close("p");
    }
    page.close("li").line();
  }

  /** Text in which every rule that gave a reason links to it. */
  private void linked(String text) {
    Matcher rule = RULE.matcher(text);
    int end = 0;
    while (rule.find()) {
      if (reasons.contains(rule.group())) {
        page.text(text.substring(end, rule.start()));
        page.element("a", rule.group(), "href", "#" + id + "-" + rule.group());
        end = rule.end();
      }
    }
    page.text(text.substring(end));
  }

  private void measures(List<Item> items) {
    page.open("table").open("thead").open("tr");
    List.of("Measure", "Value", "Held against")
        .forEach(heading -> page.element("th", heading, "scope", "col"));
    page.close("tr").close("thead").open("tbody").line();
    for (Item item : items) {
      page.open("tr").element("th", Sentence.capital(item.lead()), "scope", "row");
      page.element("td", item.text()).open("td");
      page.text(String.join("; ", item.notes())).close("td").close("tr").line();
    }
    page.close("tbody").close("table").line();
  }

  private void drawing() {
    FootMap map = FootMap.of(told.advice(), foot);
    WallLegend legend = new WallLegend(map, told.phrases().amounts());
    page.open("section", "class", "drawing").line().element("h3", "THE GROUND EDGE").line();
    page.open("div", "class", "figure").line();
    page.raw(FootDrawing.svg(map, id)).line();
    page.open("div").line();
    List<String> pieces = legend.pieces();
    if (!pieces.isEmpty()) {
      page.open("ol").line();
      pieces.forEach(piece -> page.element("li", Sentence.capital(piece)).line());
      page.close("ol").line();
    }
    legend.remarks().forEach(remark -> page.element("p", remark).line());
    if (map.outline() != null) {
      page.element("p", key(map), "class", "key").line();
    }
    page.close("div").line().close("div").line().close("section").line();
  }

  private static String key(FootMap map) {
    String lines =
        "Seen from above, toe at the top. Heavy line: sound. Long dashes: flared, cracked or"
            + " repaired. Short dashes: separated or crumbling. Dots: broken away or resected."
            + " Thin line: not mapped.";
    String nails =
        map.nails() == null
            ? ""
            : " Diamonds: places for nails. Rings: places that may take a nail.";
    return lines + nails + " The outline is drawn from the measures, not traced.";
  }
}
