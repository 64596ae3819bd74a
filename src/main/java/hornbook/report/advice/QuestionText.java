package hornbook.report.advice;

import hornbook.advice.Question;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.word.Word;
import hornbook.foot.number.Unknown;
import hornbook.interview.AnswerOutcome;
import hornbook.interview.InterviewQuestion;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PlainWords;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The questions of an interview in plain words, as wide as the terminal. */
public final class QuestionText {
  private static final String INDENT = "  ";

  private final Rulebook book;
  private final Units units;

  public QuestionText(Rulebook book, Units units) {
    this.book = book;
    this.units = units;
  }

  /** What stands over the whole interview. */
  public String greeting() {
    List<String> all = new ArrayList<>();
    if (book.practice() != null) {
      all.add("Local practice: " + book.practice().name() + ", " + book.practice().by() + ".");
    }
    all.add(
        "Answer with the number or the word. An empty line means you did not look;"
            + " that is not the same as normal.");
    all.add("?  more help    <  back to the last question    stop  save and end");
    return paragraphs(all);
  }

  /**
   * One question: what it is about, why it matters, how to look, what may be answered.
   *
   * @param known what has been answered by now, to tell the foot in hand
   */
  public String question(InterviewQuestion ask, Assessment known) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.addAll(LineWrap.lines(heading(ask, known), PageWidth.columns(), "", INDENT));
    if (ask.matter() != null) {
      String why = could(ask.matter()) + ": " + small(ask.matter().why()) + ".";
      lines.addAll(LineWrap.lines(why, PageWidth.columns(), INDENT, INDENT));
    }
    lines.addAll(LineWrap.lines(how(ask), PageWidth.columns(), INDENT, INDENT));
    lines.addAll(options(ask));
    return String.join("\n", lines) + "\n";
  }

  /** Everything there is to say on a question. */
  public String help(InterviewQuestion ask, int left) {
    List<String> all = new ArrayList<>();
    all.add(how(ask));
    all.add("Allowed: " + allowed(ask) + ".");
    Question matter = ask.matter();
    if (matter != null && !matter.couldChange().isEmpty()) {
      List<String> changes = matter.couldChange().stream().map(this::named).toList();
      all.add("It could change: " + String.join(", ", changes) + ".");
    }
    all.add("In the file: " + ask.path());
    if (left > 0) {
      all.add(left(left));
    }
    all.add(
        "An empty line or unknown: not looked at, and not asked again today. < goes back one"
            + " question. stop saves and ends; hornbook new --ask FILE goes on later.");
    return paragraphs(all);
  }

  /** How much is left, in one sentence; before the horse is known that cannot be told. */
  public String left(int things) {
    if (things == 0) {
      return "There is more to ask.";
    }
    String counted = things == 1 ? "1 thing" : things + " things";
    return counted + " could still change the advice.";
  }

  /** Why an answer cannot be. */
  public String refused(AnswerOutcome.Refused refused) {
    String nearest = refused.nearest() == null ? "" : " Did you mean " + refused.nearest() + "?";
    String found = refused.found();
    return paragraphs(
        List.of("Not " + found + ": allowed is " + refused.allowed() + "." + nearest));
  }

  private static String paragraphs(List<String> all) {
    StringBuilder text = new StringBuilder();
    for (String one : all) {
      LineWrap.lines(one, PageWidth.columns(), INDENT, INDENT)
          .forEach(line -> text.append(line).append('\n'));
    }
    return text.toString();
  }

  private String heading(InterviewQuestion ask, Assessment known) {
    String name =
        switch (ask.form()) {
          case FEET -> "which foot, or feet";
          case CRACKS -> "how many cracks";
          case STRETCH_END -> stretchEnd(ask);
          case FIELD -> FieldNames.of(ask.path());
        };
    String whose = whose(ask, known);
    String twice = ", " + whose.toLowerCase(Locale.ROOT);
    return whose + ": " + (name.endsWith(twice) ? name.replace(twice, "") : name);
  }

  private static String whose(InterviewQuestion ask, Assessment known) {
    FieldPath path = FieldPath.parse(ask.path());
    String group = ((FieldPath.Name) path.steps().get(0)).key();
    if (!group.equals("feet") || ask.form() == InterviewQuestion.Form.FEET) {
      return group.equals("kit") ? "VAN" : group.equals("visit") ? "VISIT" : "HORSE";
    }
    Limb limb =
        path.steps().get(1) instanceof FieldPath.OfLimb other
            ? other.limb()
            : known.feet().get(((FieldPath.Index) path.steps().get(1)).number()).limb();
    return FieldNames.of(limb).toUpperCase(Locale.ROOT);
  }

  private String stretchEnd(InterviewQuestion ask) {
    String side = PlainWords.of(ask.side().word()) + " wall";
    return ask.from() == 0
        ? side + ", from the middle of the toe back: where does the first stretch end"
        : side + ", on from " + length(ask.from()) + ": where does the next stretch end";
  }

  private String how(InterviewQuestion ask) {
    return switch (ask.form()) {
      case FEET -> "Seen from the saddle. Several may be named, separated by commas.";
      case CRACKS -> ask.field().how() + " 0 when you looked and there is none.";
      case STRETCH_END -> stretchHow(ask);
      case FIELD -> ask.field().how();
    };
  }

  private String stretchHow(InterviewQuestion ask) {
    String how =
        "A stretch is wall in one state. Measure to its end along the ground edge, always from the"
            + " middle of the toe.";
    String heel =
        Unknown.is(ask.edge())
            ? " An empty line when that was the last one, at the heel."
            : " The heel is at about "
                + length(ask.edge())
                + ": answer heel for it. An empty line when you looked no further.";
    return how + heel;
  }

  private List<String> options(InterviewQuestion ask) {
    return switch (ask.form()) {
      case FEET -> numbered(List.of(Limb.values()));
      case CRACKS -> example("a number, such as 0");
      case STRETCH_END -> example("such as " + length(40) + unitHint());
      case FIELD -> options(ask.field());
    };
  }

  private List<String> options(Field field) {
    Kind kind = field.kind();
    if (kind instanceof OneWord words) {
      return numbered(words.options());
    }
    if (kind instanceof WordList list) {
      List<String> lines = new ArrayList<>(numbered(list.each().options()));
      lines.addAll(example("several may be named, separated by commas; none when there is none"));
      return lines;
    }
    if (kind instanceof Flag) {
      return example("1 yes   2 no");
    }
    if (kind instanceof Day) {
      return example("today, or year-month-day such as 2026-03-14");
    }
    if (kind instanceof WholeNumber whole) {
      return example("a whole number from " + whole.least() + " to " + whole.most());
    }
    if (kind instanceof Amount amount) {
      boolean length = amount.dimension() == Dimension.LENGTH;
      return example("such as " + amount.example(units) + (length ? unitHint() : ""));
    }
    return List.of();
  }

  private String unitHint() {
    return units == Units.INCH ? "; fractions are understood, or mm with their unit" : "";
  }

  private static List<String> example(String text) {
    return LineWrap.lines(text, PageWidth.columns(), INDENT + INDENT, INDENT + INDENT);
  }

  /** {@code 1 normal 2 raised 3 bounding}, as many on a line as fit. */
  private static List<String> numbered(List<? extends Word> words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i).word();
      String spoken = PlainWords.of(word);
      boolean latin = words.get(i) instanceof Side;
      String option = (i + 1) + " " + (latin ? word + " (" + spoken + ")" : word);
      if (line.length() > 0
          && INDENT.length() * 2 + line.length() + 3 + option.length() > PageWidth.columns()) {
        lines.add(INDENT + INDENT + line);
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : "   ").append(option);
    }
    lines.add(INDENT + INDENT + line);
    return lines;
  }

  private String allowed(InterviewQuestion ask) {
    return switch (ask.form()) {
      case FEET -> "left-fore, right-fore, left-hind, right-hind";
      case CRACKS -> "a whole number, or none";
      case STRETCH_END -> "a length beyond " + length(ask.from());
      case FIELD -> ask.field().kind().allowed().replace(", without quotes", "");
    };
  }

  private static String could(Question question) {
    return switch (question.worth()) {
      case NOW -> "Could mean a vet now";
      case TODAY -> "Could mean a vet today";
      case DAYS -> "Could mean a vet within days";
      case MENTION ->
          question.urgency() == null
              ? "Could make a call for the vet less urgent"
              : "Could be worth mentioning to the vet";
      case FIRST_CHOICE -> "Could change the first choice";
      case VERDICT -> "Could change what else is possible";
      case SUPPORT -> "Could change the support";
      case CAUTION -> "Could bring a caution";
      case MEASURE -> "Could add to the reasons";
    };
  }

  private String named(String change) {
    NamedOption technique = book.technique(change);
    NamedOption support = book.support(change);
    if (technique != null || support != null) {
      return technique != null ? technique.label() : support.label();
    }
    return change.equals("referral") ? "whether the vet is called" : "a caution";
  }

  private String length(double mm) {
    return units.show(mm, Dimension.LENGTH);
  }

  private static String small(String title) {
    boolean word =
        title.length() > 1 && " abcdefghijklmnopqrstuvwxyz".indexOf(title.charAt(1)) >= 0;
    return word ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1) : title;
  }
}
