package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.assessment.word.Word;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.DrawingPart;
import hornbook.report.drawing.Drawings;
import hornbook.report.drawing.FootMap;
import hornbook.report.drawing.WallLegend;
import hornbook.report.page.Fold;
import hornbook.report.page.Markup;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The advice on one foot as part of a page; a rule named links to the reason it gave. */
final class HtmlFoot {
  private static final int MOST_MEASURES = 8;

  /** On a telephone these are folded; cautions can be. */
  private static final Set<Kind> FOLDED =
      EnumSet.of(
          Kind.FOUND, Kind.SUPPORT, Kind.NEXT, Kind.NOT_INDICATED, Kind.REASONS, Kind.SOURCES);

  private static final Pattern RULE = Pattern.compile("[A-Z]\\d{3}\\b");

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
    List<Section> first = sections.sections().stream().filter(one -> !later(one.kind())).toList();
    List<Section> later = sections.sections().stream().filter(one -> later(one.kind())).toList();
    first.forEach(this::section);
    drawings();
    later.forEach(this::section);
    page.close("article").line();
  }

  /** What stands behind what is to be done and what was measured. */
  private static boolean later(Kind kind) {
    return FOLDED.contains(kind) || kind == Kind.CAUTIONS;
  }

  private void section(Section section) {
    String kind = Word.kebab(section.kind().name());
    boolean folded = later(section.kind());
    page.open("section", "class", kind).line();
    if (folded) {
      Fold.begin(section.heading(), section.kind() == Kind.CAUTIONS, page);
    } else {
      page.element("h3", section.heading()).line();
    }
    if (section.kind() == Kind.MEASURES) {
      measures(section.items());
    } else if (section.inOne()) {
      page.element("p", Sentence.capital(section.items().get(0).line())).line();
    } else {
      page.open("ul").line();
      section.items().forEach(item -> item(section, item));
      page.close("ul").line();
    }
    if (folded) {
      Fold.end(page);
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

  /** The nearest to a limit; the others can be folded. */
  private void measures(List<Item> items) {
    int shown = Math.min(MOST_MEASURES, items.size());
    table(items.subList(0, shown));
    if (items.size() > shown) {
      Fold.begin("MEASURED, FURTHER FROM A LIMIT: " + (items.size() - shown), false, page);
      table(items.subList(shown, items.size()));
      Fold.end(page);
    }
  }

  private void table(List<Item> items) {
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

  private void drawings() {
    page.open("div", "class", "drawings").line();
    Fold.begin("DRAWINGS", false, page);
    ground();
    drawings.stream().skip(1).forEach(one -> DrawingPart.write(List.of(one), page));
    Fold.end(page);
    page.close("div").line();
  }
}
