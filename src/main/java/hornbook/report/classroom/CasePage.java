package hornbook.report.classroom;

import hornbook.assessment.Foot;
import hornbook.assessment.quantity.Units;
import hornbook.report.advice.PageHead;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Rulebook;
import hornbook.study.critique.About;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.critique.FootKey;
import hornbook.study.exercise.BlankAnswer;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.OtherView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A case as a learner gets it, as a sheet to write on, and with its key. */
public final class CasePage {
  private final Exercise exercise;
  private final Units units;

  private CasePage(Exercise exercise, Units units) {
    this.exercise = exercise;
    this.units = units;
  }

  /** Story and assessment, without the answer. */
  public static String text(Exercise exercise, Units units) {
    return LeafText.of(new CasePage(exercise, units).shown());
  }

  public static String markdown(Exercise exercise, Units units) {
    return LeafMarkdown.of(new CasePage(exercise, units).shown());
  }

  public static String html(Exercise exercise, Units units) {
    return LeafHtml.of(new CasePage(exercise, units).shown());
  }

  /**
   * Sheets to write on, then the keys, each on a page of its own.
   *
   * @param names of the learners, a sheet for each; none for one sheet without a name
   * @param keys the key of each case; none to leave the keys out
   */
  public static String sheetsHtml(
      List<Exercise> exercises, Collection<String> names, List<CaseKey> keys, Units units) {
    List<Leaf> leaves = sheets(exercises, names, keys, units);
    String title = keys.isEmpty() ? "Answer sheets" : "Answer sheets and keys";
    return leaves.size() == 1 ? LeafHtml.of(leaves.get(0)) : LeafHtml.of(title, leaves);
  }

  public static String sheetsMarkdown(
      List<Exercise> exercises, Collection<String> names, List<CaseKey> keys, Units units) {
    return sheets(exercises, names, keys, units).stream()
        .map(LeafMarkdown::of)
        .collect(Collectors.joining("\n---\n\n"));
  }

  /** The key alone. */
  public static String keyHtml(Exercise exercise, CaseKey key, Units units) {
    return LeafHtml.of(new CasePage(exercise, units).key(key));
  }

  private static List<Leaf> sheets(
      List<Exercise> exercises, Collection<String> names, List<CaseKey> keys, Units units) {
    List<Leaf> leaves = new ArrayList<>();
    for (String name : names.isEmpty() ? List.of("") : names) {
      for (Exercise exercise : exercises) {
        leaves.add(new CasePage(exercise, units).sheet(name));
      }
    }
    for (int at = 0; at < keys.size(); at++) {
      leaves.add(new CasePage(exercises.get(at), units).key(keys.get(at)));
    }
    return leaves;
  }

  private Leaf shown() {
    Leaf leaf = new Leaf(exercise.shownTitle()).paragraph(exercise.story());
    facts(leaf);
    leaf.heading("To be answered");
    List<String> feet = new ArrayList<>();
    BlankAnswer.feet(exercise).forEach(foot -> feet.add(FieldNames.of(foot.limb())));
    leaf.paragraph(Sentence.capital(String.join(", ", feet)) + ". A sheet to write on:");
    return leaf.add(new Leaf.Command("hornbook exercise sheet " + exercise.name()));
  }

  private void facts(Leaf leaf) {
    leaf.heading("What was seen and measured");
    for (Map.Entry<String, List<String>> part :
        new CaseFacts(units).of(exercise.assessment()).entrySet()) {
      leaf.under(part.getKey()).add(new Leaf.Facts(part.getValue()));
    }
  }

  private Leaf sheet(String name) {
    Leaf leaf = new Leaf(exercise.shownTitle());
    String by = name.isEmpty() ? "______________________" : name;
    leaf.paragraph("Name or number: " + by + "   Case: " + exercise.name());
    leaf.paragraph(exercise.story());
    facts(leaf);
    for (Foot foot : BlankAnswer.feet(exercise)) {
      leaf.add(new Leaf.Heading(2, "Your answer: " + FieldNames.of(foot.limb()), "answer"));
      room(leaf, "1. The vet.", "None, a mention, within days, today, now? For what?", 2);
      room(leaf, "2. What did you find?", "Name what departs from a sound, balanced foot.", 2);
      room(leaf, "3. What goes on the foot today, and why?", "Or nothing. Name the rules.", 3);
      room(leaf, "4. What is ruled out, and why?", "", 3);
      room(leaf, "5. Support for heels and toe?", "", 1);
      room(leaf, "6. What has to be watched?", "", 2);
      room(leaf, "7. What was not looked at and should be?", "", 2);
      room(leaf, "8. When do you come again?", "", 1);
    }
    return leaf;
  }

  private static void room(Leaf leaf, String question, String words, int lines) {
    leaf.add(new Leaf.Room(question, words, lines));
  }

  private Leaf key(CaseKey key) {
    Rulebook book = key.advice().rulebook();
    CritiqueWords words = new CritiqueWords(book, units);
    Leaf leaf = new Leaf("Key: " + exercise.title());
    for (FootKey foot : key.feet().values()) {
      leaf.heading(Sentence.capital(FieldNames.of(foot.foot().limb())));
      new KeyLines(words, foot).addTo(leaf);
    }
    for (OtherView view : exercise.differs()) {
      leaf.item("Authors differ", words.author(view.source()) + ": " + view.says(), List.of());
    }
    part(leaf, "Ask the class", exercise.asks());
    part(leaf, "Teaching points", exercise.notes());
    leaf.paragraph("Level " + exercise.level() + ". Topics: " + topics(book) + ".");
    return leaf.paragraph(PageHead.rulebook(key.advice()));
  }

  private String topics(Rulebook book) {
    return book.topics().stream()
        .filter(topic -> exercise.topics().contains(topic.id()))
        .map(topic -> topic.title())
        .collect(Collectors.joining("; "));
  }

  private static void part(Leaf leaf, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      leaf.heading(heading);
      lines.forEach(line -> leaf.item("", line, List.of()));
    }
  }

  /** The model answer of one foot, line by line. */
  private record KeyLines(CritiqueWords words, FootKey key) {
    void addTo(Leaf leaf) {
      FootAnswer model = key.model();
      add(leaf, "Vet", words.name(About.VET, model.vet()), rules(About.VET));
      add(leaf, "Technique", words.option(model.technique()), rules(About.TECHNIQUE));
      add(leaf, "Because", titles(model.because()), List.of());
      add(
          leaf,
          "Ruled out",
          options(List.copyOf(model.ruledOut().keySet())),
          rules(About.RULED_OUT));
      add(leaf, "Supports", options(model.supports()), List.of());
      add(leaf, "Found", names(About.FINDING, model.findings()), List.of());
      add(leaf, "Cautions", names(About.CAUTION, model.cautions()), List.of());
      add(leaf, "Still to look at", names(About.QUESTION, model.ask()), List.of());
      if (model.nextVisit() != null) {
        String days = words.phrases().amounts().text(model.nextVisit(), "days");
        add(leaf, "Next visit", "in " + days, List.of());
      }
    }

    private List<String> rules(About about) {
      List<String> says = new ArrayList<>();
      Critic.of(key, FootAnswer.blank(key.foot().limb())).about(about).stream()
          .limit(3)
          .forEach(
              point ->
                  words.says(point, 1).stream()
                      .filter(line -> !line.startsWith("and ") && !says.contains(line))
                      .forEach(says::add));
      return says;
    }

    private String titles(List<String> rules) {
      return rules.stream().map(words::title).collect(Collectors.joining("; "));
    }

    private String options(List<String> ids) {
      return ids.stream().map(words::option).collect(Collectors.joining(", "));
    }

    private String names(About about, List<String> ids) {
      return ids.stream().map(id -> words.name(about, id)).collect(Collectors.joining(", "));
    }

    private static void add(Leaf leaf, String lead, String text, List<String> notes) {
      leaf.item(lead, text.isEmpty() ? "none" : text, notes);
    }
  }
}
