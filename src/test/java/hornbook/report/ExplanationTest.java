package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FiredRule;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.fact.Truth;
import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.report.page.TextOptions;
import hornbook.report.study.ChainLinkText;
import hornbook.report.study.ExplanationText;
import hornbook.report.words.Detail;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Condition;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rules.Shipped;
import hornbook.study.explain.ChainLink;
import hornbook.study.explain.Explainer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.RuleChain;
import hornbook.study.explain.Subject;
import hornbook.study.explain.SubjectNames;
import hornbook.study.rulecase.RuleCase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Explanations name what was observed, the limit and how far off it was, and never fail. */
class ExplanationTest {
  /** Of the subjects every so many-th is looked at on one foot, others on the next. */
  private static final int APART = 5;

  private static final SubjectNames NAMES = new SubjectNames(Shipped.BOOK);
  private static final Phrases PHRASES = new Phrases(Shipped.BOOK, Units.MM);
  private static final ChainLinkText LINKS = new ChainLinkText(Shipped.BOOK, PHRASES);

  /** Words that only the inside of the program knows; looked for where one of them can begin. */
  private static final Pattern INSIDES =
      Pattern.compile(
          "(?=[nNI$DdKkEhj@f(TU{])(?:"
              + "null|NaN|Infinity|\\$|[Dd]rools|[Kk]ie\\b|Exception|hornbook\\.|java\\.|@[0-9a-f]{3}"
              + "|\\bfact\\b|(?<=[a-z])\\([)a-z]|\\bTRUE\\b|\\bUNKNOWN\\b|\\{\\w+\\})");

  /** Sentences looked through already: most rules say the same of many feet. */
  private static final Set<String> LOOKED_THROUGH = new HashSet<>();

  /** Limits whose words were looked at already. */
  private static final Set<Limit> NAMED = Collections.newSetFromMap(new IdentityHashMap<>());

  /** Every rule of the rule base against the case of every rule and each exercise. */
  @Test
  void every_silent_rule_on_every_case_has_a_named_reason() throws Exception {
    int pairs = 0;
    for (RuleCase one : Shipped.ruleCases().values()) {
      pairs += named(one.assessment(), one.rule());
    }
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      pairs += named(read(file), file.toString());
    }
    assertThat(pairs).isGreaterThan(Shipped.BOOK.rules().size() * Shipped.BOOK.rules().size());
  }

  /** How many silent rules were met, each with its reason. */
  private static int named(Assessment assessment, String where) {
    Advice advice = Shipped.ADVISOR.judge(assessment);
    int silent = 0;
    for (FootAdvice foot : advice.feet()) {
      Explainer explainer = new Explainer(advice, foot);
      Set<String> fired = foot.firings().stream().map(FiredRule::rule).collect(Collectors.toSet());
      for (String rule : Shipped.BOOK.rules().keySet()) {
        RuleChain chain = explainer.chain(rule);
        assertThat(chain.fired()).as(where + " " + rule).isEqualTo(fired.contains(rule));
        if (!chain.fired()) {
          silent++;
          reason(chain, where + " " + rule);
        }
      }
    }
    return silent;
  }

  /** A chain stands no better than its weakest link, and the advice tells it so too. */
  @Test
  void why_tells_the_weakest_ground_as_the_advice_does() throws Exception {
    int reasons = 0;
    for (Advice advice : Pages.all().values()) {
      for (FootAdvice foot : advice.feet()) {
        Explainer explainer = new Explainer(advice, foot);
        Stream<OptionAdvice> judged =
            Stream.concat(foot.techniques().stream(), foot.supports().stream());
        for (ReasonGiven reason : judged.flatMap(one -> one.reasons().stream()).toList()) {
          assertThat(explainer.chain(reason).basis()).as(reason.rule()).isEqualTo(reason.basis());
          reasons++;
        }
      }
    }
    assertThat(reasons).isGreaterThan(Shipped.BOOK.rules().size());
    Advice advice = Pages.whole().get("cases/exercises/showjumper-torn-side.yaml");
    RuleChain glued = new Explainer(advice, advice.feet().get(0)).chain("G005");
    assertThat(glued.rule().basis()).isEqualTo(Basis.PUBLISHED);
    assertThat(glued.basis()).as("it rests on limits to be checked").isEqualTo(Basis.MEMORY);
  }

  private static void reason(RuleChain chain, String where) {
    ChainLink link = chain.obstacle().orElseThrow(() -> new AssertionError(where + ": no reason"));
    String says = LINKS.comparison(link, chain.rule(), false);
    if (LOOKED_THROUGH.add(says)) {
      assertThat(INSIDES.matcher(says).find()).as(where + ": " + says).isFalse();
    }
    if (link.condition() instanceof Condition.OfFinding finding) {
      assertThat(says).as(where).contains(PHRASES.of(Finding.of(finding.what())));
      assertThat(link.makers()).as(where).isNotEmpty().noneMatch(RuleChain::fired);
      link.makers().forEach(maker -> reason(maker, where));
      return;
    }
    assertThat(link.noted()).as(where + ": " + says).isNotEmpty();
    if (!(link.condition() instanceof Condition.OfReading)) {
      assertThat(says).as(where).contains(link.noted().get(0).path());
      return;
    }
    Limit limit = link.state().limit();
    if (limit == null) {
      assertThat(says).as(where).contains("has no limit for it");
      return;
    }
    assertThat(says).as(where).contains(PHRASES.of(limit));
    assertThat(link.asked()).as(where).isSameAs(limit);
    if (NAMED.add(limit)) {
      assertThat(LINKS.limit(link, false)).as(where).contains(limit.id()).contains(limit.label());
    }
    if (link.truth() == Truth.FALSE) {
      Reading reading = (Reading) link.state().cited().get(0);
      assertThat(link.off()).as(where).isNotNull();
      assertThat(reading.satisfies(limit) || reading.misses(limit)).as(where).isTrue();
      assertThat(says).as(where).containsAnyOf("; off by ", "; it lies just on the limit");
    } else {
      boolean all = link.noted().stream().noneMatch(field -> field.value() == null);
      String unknown = all ? " cannot be worked out from these;" : " not known;";
      assertThat(says).as(where).containsAnyOf(unknown, "it may lie either side");
    }
  }

  @Test
  void subjects_are_explained_in_twelve_lines_on_every_exercise() throws Exception {
    List<Subject> all = NAMES.all();
    int first = 0;
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      Advice advice = Shipped.ADVISOR.advise(read(file));
      for (FootAdvice foot : advice.feet()) {
        Explainer explainer = new Explainer(advice, foot);
        first = (first + 1) % APART;
        for (int at = first; at < all.size(); at += APART) {
          told(explainer.why(all.get(at)), Detail.USUAL, file);
          told(explainer.whyNot(all.get(at)), Detail.USUAL, file);
        }
      }
    }
  }

  @Property(tries = 20)
  void explaining_never_fails(
      @ForAll("assessments") Assessment any, @ForAll @IntRange(max = 4) int first) {
    Advice advice = Shipped.ADVISOR.advise(any);
    FootAdvice foot = advice.feet().get(advice.feet().size() - 1);
    Explainer explainer = new Explainer(advice, foot);
    List<Subject> all = NAMES.all();
    for (int at = first; at < all.size(); at += APART) {
      told(explainer.why(all.get(at)), Detail.FULL, any);
      told(explainer.whyNot(all.get(at)), Detail.USUAL, any);
    }
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  private static void told(Explanation one, Detail detail, Object of) {
    Units units = one.whyNot() ? Units.INCH : Units.MM;
    TextOptions options = new TextOptions(units, detail, false, TextOptions.USUAL_WIDTH);
    String text = ExplanationText.render(List.of(one), Shipped.BOOK, options);
    List<Object> where = List.of(of, one.subject());
    assertThat(text.strip()).as("%s", where).isNotEmpty();
    assertThat(INSIDES.matcher(text).find()).as("%s: %s", where, text).isFalse();
    List<String> lines = text.lines().toList();
    assertThat(lines).as("%s", where).allMatch(line -> line.length() <= TextOptions.USUAL_WIDTH);
    if (detail == Detail.USUAL) {
      assertThat(lines.size()).as("%s%n%s", where, text).isBetween(1, ExplanationText.LINES);
    }
  }

  /** From the field of the file to the verdict, in this order. */
  @Test
  void the_chain_runs_from_the_field_to_the_verdict() {
    String text =
        whyNot(
            """
            horse: {ageYears: 9}
            feet:
              - limb: left-fore
                measures: {bearingLength: 130 mm, width: 124 mm}
                cracks: []
                wall:
                  - {side: medial, from: 0 mm, to: 150 mm, state: broken-away, moist: false}
                  - {side: lateral, from: 0 mm, to: 150 mm, state: sound, thickness: 9 mm}
            """,
            "nail-on");
    assertThat(text)
        .containsSubsequence(
            "Left fore: a nailed shoe is ruled out.",
            "feet[0].measures.bearingLength = 130 mm",
            "nail sites, weaker branch 0: less than 2, by 2",
            "limit nails.branch.least: fewest nails that hold a branch: 2 (published",
            "source:",
            "so: Too few nails find sound wall in a branch (N003): rules out");
  }

  @Test
  void a_silent_rule_says_how_far_off_it_was() {
    String text =
        whyNot("feet: [{limb: left-fore, measures: {toeLength: 84, heelLength: 35}}]", "B002");
    assertThat(text)
        .containsSubsequence(
            "feet[0].measures.toeLength = 84 mm, feet[0].measures.heelLength = 35 mm",
            "toe length to heel length 2.4 to 1; asked for: more than 3 to 1; off by 0.6");
  }

  @Test
  void what_was_not_looked_at_is_said_to_be_so() {
    String text = whyNot("feet: [{limb: left-fore}]", "b002");
    assertThat(text)
        .contains("stays silent")
        .contains("not looked at: feet[0].measures.toeLength, feet[0].measures.heelLength")
        .contains("toe length to heel length not known; asked for: more than 3 to 1");
  }

  private static String whyNot(String assessment, String subject) {
    String file = "format: hornbook-assessment/1\n" + assessment;
    ReadResult read =
        AssessmentReader.read(file.getBytes(StandardCharsets.UTF_8), "written", List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    Advice advice = Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment());
    Explainer explainer = new Explainer(advice, advice.feet().get(0));
    Explanation one = explainer.whyNot(NAMES.named(subject).orElseThrow());
    return ExplanationText.render(List.of(one), Shipped.BOOK, TextOptions.usual());
  }

  private static Assessment read(Path file) throws Exception {
    ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return ((ReadResult.Good) read).assessment();
  }
}
