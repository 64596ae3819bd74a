package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.assessment.word.Word;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.DrawingPart;
import hornbook.report.drawing.Drawings;
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
  private final List<Drawing> drawings;
  private final Set<String> reasons = new HashSet<>();

  HtmlFoot(PageContext told, FootAdvice foot, Markup page) {
    this.told = told;
    this.foot = foot;
    this.page = page;
    this.id = foot.limb().word();
    this.drawings = Drawings.of(told.advice(), foot, told.phrases().amounts());
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
    boolean found = sections.sections().stream().anyMatch(one -> one.kind() == Kind.FOUND);
    boolean measured = sections.sections().stream().anyMatch(one -> one.kind() == Kind.MEASURES);
    for (Section section : sections.sections()) {
      if (section.kind() == Kind.FOUND) {
        ground();
      }
      section(section);
      if (section.kind() == Kind.MEASURES) {
        otherDrawings();
      }
    }
    if (!found) {
      ground();
    }
    if (!measured) {
      otherDrawings();
    }
    page.close("article").line();
  }

  private void section(Section section) {
    String kind = Word.kebab(section.kind().name());
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
    List.of("Measure", "Value", "Limits")
        .forEach(heading -> page.element("th", heading, "scope", "col"));
    page.close("tr").close("thead").open("tbody").line();
    for (Item item : items) {
      page.open("tr").element("th", Sentence.capital(item.lead()), "scope", "row");
      page.element("td", item.text()).open("td");
      page.text(String.join("; ", item.notes())).close("td").close("tr").line();
    }
    page.close("tbody").close("table").line();
  }

  /** The ground edge, with the map of the wall in words beside it. */
  private void ground() {
    FootMap map = FootMap.of(told.advice(), foot);
    WallLegend legend = new WallLegend(map, told.phrases().amounts());
    Drawing ground = drawings.get(0);
    page.open("section", "class", "drawing ground").line();
    page.element("h3", ground.picture().heading()).line();
    if (ground.drawn()) {
      page.open("figure").line().raw(ground.svg()).line().close("figure").line();
    }
    List<String> pieces = legend.pieces();
    if (!pieces.isEmpty()) {
      page.open("ol").line();
      pieces.forEach(piece -> page.element("li", Sentence.capital(piece)).line());
      page.close("ol").line();
    }
    legend.remarks().forEach(remark -> page.element("p", remark).line());
    if (ground.drawn()) {
      page.element("p", ground.key(), "class", "key").line();
    }
    page.close("section").line();
  }

  private void otherDrawings() {
    drawings.stream().skip(1).forEach(one -> DrawingPart.write(List.of(one), page));
  }
}
