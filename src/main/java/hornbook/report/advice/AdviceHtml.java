package hornbook.report.advice;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import hornbook.report.page.Section;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;

/**
 * Writes the whole of the advice as one page that needs nothing beside it: no script, no other
 * file. It reads on a telephone, on a desk and on paper.
 */
public final class AdviceHtml {
  private AdviceHtml() {}

  /** Everything {@link Detail#FULL} tells, with a drawing of each foot. */
  public static String render(Advice advice, Units units) {
    return render(advice, units, Detail.FULL);
  }

  /** As much as asked for, with a drawing of each foot. */
  public static String render(Advice advice, Units units, Detail detail) {
    PageContext told = PageContext.of(advice, units, detail);
    Markup page = new Markup();
    PageFrame.begin(page, "Hornbook advice: " + PageHead.title(advice), PageHead.title(advice));
    head(told, page);
    page.open("main").line();
    for (FootAdvice foot : advice.feet()) {
      new HtmlFoot(told, foot, page).write();
    }
    if (PracticePart.below(advice)) {
      practice(told, page);
    }
    page.close("main").line();
    page.open("footer").element("p", PageHead.SAFETY, "class", "safety");
    page.element("p", PageHead.rulebook(advice)).close("footer").line();
    PageFrame.end(page);
    return page.toString();
  }

  private static void head(PageContext told, Markup page) {
    Advice advice = told.advice();
    page.open("header").line();
    page.element("h1", "Hornbook advice: " + PageHead.title(advice)).line();
    String facts = PageHead.facts(advice, told.phrases());
    if (!facts.isEmpty()) {
      page.element("p", facts).line();
    }
    page.element("p", PageHead.SAFETY, "class", "safety").line();
    if (advice.feet().size() > 1) {
      page.open("nav", "aria-label", "Feet").open("ul");
      for (FootAdvice foot : advice.feet()) {
        String name = Sentence.capital(FieldNames.of(foot.limb()));
        page.open("li").element("a", name, "href", "#" + foot.limb().word()).close("li");
      }
      page.close("ul").close("nav").line();
    }
    if (!PracticePart.below(advice)) {
      practice(told, page);
    }
    page.close("header").line();
  }

  private static void practice(PageContext told, Markup page) {
    PracticePart.of(told).forEach(practice -> practice(practice, page));
  }

  private static void practice(Section practice, Markup page) {
    page.open("section", "class", "practice").element("h2", practice.heading()).line();
    page.open("ul").line();
    for (Section.Item item : practice.items()) {
      page.element("li", Sentence.capital(item.line())).line();
    }
    page.close("ul").close("section").line();
  }
}
