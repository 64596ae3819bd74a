package hornbook.report.classroom;

import hornbook.assessment.field.FieldValue;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.PageWidth;
import hornbook.report.page.PlainPage;
import hornbook.report.words.FieldNames;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.exercise.Exercise;
import hornbook.study.lesson.LessonReply;
import hornbook.study.lesson.RestsOn;
import hornbook.study.lesson.Step;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A lesson in plain words, as wide as the terminal. */
public final class LessonText {
  private static final int FEW = 20;
  private static final int MOST = 6;

  private final CaseFacts facts;
  private final CritiqueWords words;
  private final RuleWords rules;

  public LessonText(Rulebook book, Units units) {
    this.facts = new CaseFacts(units);
    this.words = new CritiqueWords(book, units);
    this.rules = new RuleWords(book, words.phrases());
  }

  /** What stands over the whole lesson. */
  public String greeting(Exercise exercise) {
    PlainPage page = new PlainPage();
    page.heading(exercise.shownTitle());
    page.paragraph(0, exercise.story());
    page.heading("?  what can be answered    hint  up to three    <  back    stop  end here");
    return page.text();
  }

  /** What is asked at a step. */
  public String question(Step step) {
    PlainPage page = new PlainPage();
    String foot = step.foot() == null ? "" : FieldNames.of(step.foot().foot().limb()) + ": ";
    page.asIs(0, "");
    page.hanging(0, 2, foot.toUpperCase(java.util.Locale.ROOT) + asked(step.kind()));
    if (!step.words().isEmpty() && step.words().size() <= FEW) {
      numbered(step.words()).forEach(line -> page.asIs(2, line));
    }
    return page.text();
  }

  /** The words with their numbers, as many on a line as fit. */
  private static List<String> numbered(List<String> words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (int at = 0; at < words.size(); at++) {
      String word = (at + 1) + " " + words.get(at);
      if (line.length() > 0 && line.length() + 3 + word.length() > PageWidth.columns() - 4) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : "   ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static String asked(Step.Kind kind) {
    return switch (kind) {
      case LOOK ->
          "What would you look at or measure? Name it, such as toe angle, signs, wall. Asking"
              + " costs nothing. An empty line goes on to the questions.";
      case VET -> "How soon does a vet have to see the horse?";
      case VET_FOR -> "What is the vet called for? Words with commas between; none.";
      case FINDINGS -> "What did you find on the foot? Words with commas between; none.";
      case TECHNIQUE -> "What goes on the foot today?";
      case BECAUSE -> "Why? Ids of rules, as N003, or your own words.";
      case RULED_OUT ->
          "What is ruled out today, and by which rules? As nail-on: N003, heel-wedge; none.";
      case SUPPORTS -> "What supports heels and toe? Words with commas between; none.";
      case CAUTIONS -> "What has to be watched? Words with commas between; none.";
      case ASK -> "What was not looked at and should be? Names of fields; none.";
      case NEXT_VISIT -> "When do you come again? As 42 days or 6 weeks.";
      case DEPARTS ->
          "If you know the advice and choose differently, say why. Otherwise leave the line empty.";
    };
  }

  /** What became of a line that was no answer. */
  public String told(LessonReply reply) {
    PlainPage page = new PlainPage();
    if (reply instanceof LessonReply.Seen seen) {
      facts.lines(seen.fields()).forEach(line -> page.hanging(2, 4, line));
    } else if (reply instanceof LessonReply.Askable askable) {
      Set<String> labels = new LinkedHashSet<>();
      for (FieldValue field : askable.fields()) {
        labels.add(field.field().label());
      }
      page.hanging(2, 2, "Whole groups: horse, visit, measures, signs, wall, cracks, kit.");
      page.hanging(2, 2, "Or one by one: " + String.join(", ", labels) + ".");
    } else if (reply instanceof LessonReply.Help help) {
      page.hanging(2, 2, allowed(help.step()));
    } else if (reply instanceof LessonReply.Refused refused) {
      String nearest = refused.nearest() == null ? "" : " Nearest: " + refused.nearest() + ".";
      page.hanging(
          2, 2, "Not \"" + refused.found() + "\". Allowed: " + refused.allowed() + "." + nearest);
    } else if (reply instanceof LessonReply.Hint hint) {
      hint(hint, page);
    } else if (reply instanceof LessonReply.Back) {
      page.paragraph(2, "There is no question before this one.");
    }
    return page.text();
  }

  private static String allowed(Step step) {
    return switch (step.kind()) {
      case NEXT_VISIT -> "From 1 to 365 days, as 42 days or 6 weeks.";
      case DEPARTS -> "Your reason, in your own words; or an empty line.";
      case RULED_OUT ->
          String.join(", ", step.words()) + "; or none. Rules behind a colon: nail-on: N003 N001.";
      case ASK -> "Fields such as digitalPulse, hoofHeat, soleDepth, horse.weight; or none.";
      case BECAUSE ->
          "Any of " + step.words().size() + " rules (hornbook rules list), or your own words.";
      default -> String.join(", ", step.words()) + (step.kind().list() ? "; or none." : ".");
    };
  }

  private void hint(LessonReply.Hint hint, PlainPage page) {
    List<LessonReply.OfFoot> few = hint.evidence().stream().limit(MOST).toList();
    if (hint.step().kind() == Step.Kind.NEXT_VISIT) {
      page.hanging(2, 2, visit(hint));
      return;
    }
    if (few.isEmpty()) {
      page.hanging(2, 2, nothing(hint.level()));
      return;
    }
    switch (hint.level()) {
      case 1 -> page.hanging(2, 2, "Hint 1, where to look: " + where(few) + ".");
      case 2 -> {
        page.paragraph(2, "Hint 2, what it is compared with:");
        compared(few).forEach(line -> page.hanging(2, 4, "- " + line));
      }
      default -> {
        page.paragraph(2, "Hint 3, what follows:");
        few.forEach(one -> page.hanging(2, 4, "- " + words.told(one.evidence())));
      }
    }
  }

  /** The hints where the right answer is that there is nothing. */
  private static String nothing(int level) {
    return switch (level) {
      case 1 ->
          "Hint 1, where to look: go through all that was seen and measured. What departs from a"
              + " sound foot?";
      case 2 ->
          "Hint 2, what it is compared with: nothing looked at reaches a limit that matters"
              + " here.";
      default -> "Hint 3, what follows: none.";
    };
  }

  /** The interval is worked out on the job sheet, and no rule of the foot is behind it. */
  private String visit(LessonReply.Hint hint) {
    Double days = hint.step().foot().model().nextVisit();
    return switch (hint.level()) {
      case 1 -> "Hint 1, where to look: what goes on today, and how fast this hoof grows.";
      case 2 ->
          "Hint 2, what it is compared with: how long that holds, and what has to be checked before:"
              + " hornbook plan, under GROWTH AND NEXT VISIT.";
      default ->
          "Hint 3, what follows: "
              + (days == null
                  ? "no interval, since nothing is done today."
                  : "in " + words.phrases().amounts().text(days, "days") + ".");
    };
  }

  private static String where(List<LessonReply.OfFoot> few) {
    Set<String> names = new LinkedHashSet<>();
    for (LessonReply.OfFoot one : few) {
      RestsOn.paths(one.evidence(), one.foot()).forEach(path -> names.add(FieldNames.of(path)));
    }
    return names.stream().limit(MOST).collect(Collectors.joining(", "));
  }

  private List<String> compared(List<LessonReply.OfFoot> few) {
    Set<String> lines = new LinkedHashSet<>();
    for (LessonReply.OfFoot one : few) {
      for (Limit limit : RestsOn.limits(one.evidence(), one.foot())) {
        lines.add(limit.label() + ": " + words.phrases().groundedLimit(limit));
      }
    }
    for (LessonReply.OfFoot one : few) {
      lines.addAll(rules.conditions(words.rule(one.evidence().rule())));
    }
    return lines.stream().limit(MOST).toList();
  }

  /** What the answer rests on and was never asked for; empty where all of it was. */
  public String notLookedAt(List<String> paths, int hints) {
    PlainPage page = new PlainPage();
    if (!paths.isEmpty()) {
      String names =
          paths.stream().map(FieldNames::of).distinct().collect(Collectors.joining(", "));
      page.heading("NOT LOOKED AT");
      page.paragraph(2, "The answer rests on these, and you did not ask for them: " + names + ".");
    }
    if (hints > 0) {
      page.heading("Hints taken: " + hints + ".");
    }
    return page.text();
  }
}
