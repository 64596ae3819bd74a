package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.study.critique.CaseKey;
import hornbook.study.critique.FootKey;
import hornbook.study.exercise.Answers;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever an answer says: less that is right, or more that is wrong, never wins marks. */
class MarksPropertyTest {
  private static final List<CaseKey> KEYS = new TreeMap<>(Lessons.KEYS).values().stream().toList();

  /** A part of an answer that is a list: how it is read, changed, and what the model has there. */
  private enum Part {
    FINDINGS(MarkedPoint.FINDINGS, Lessons.WORDS.findings()),
    REFERRALS(MarkedPoint.REFERRALS, Lessons.WORDS.referrals()),
    BECAUSE(MarkedPoint.REASONS, Lessons.WORDS.rules()),
    RULED_OUT(MarkedPoint.RULED_OUT, Lessons.WORDS.techniques()),
    SUPPORTS(MarkedPoint.SUPPORTS, Lessons.WORDS.supports()),
    CAUTIONS(MarkedPoint.CAUTIONS, Lessons.WORDS.cautions()),
    ASK(MarkedPoint.QUESTIONS, List.of("feet[0].signs.hoofHeat", "feet[0].signs.stain"));

    private final MarkedPoint point;
    private final List<String> words;

    Part(MarkedPoint point, List<String> words) {
      this.point = point;
      this.words = words;
    }

    List<String> of(FootAnswer answer) {
      return switch (this) {
        case FINDINGS -> answer.findings();
        case REFERRALS -> answer.vetFor();
        case BECAUSE -> answer.because();
        case RULED_OUT -> List.copyOf(answer.ruledOut().keySet());
        case SUPPORTS -> answer.supports();
        case CAUTIONS -> answer.cautions();
        case ASK -> answer.ask();
      };
    }

    FootAnswer with(FootAnswer answer, List<String> words) {
      return switch (this) {
        case FINDINGS -> Answers.findings(answer, words);
        case REFERRALS -> Answers.vet(answer, answer.vet(), words);
        case BECAUSE -> Answers.because(answer, words);
        case RULED_OUT -> Answers.ruledOut(answer, ruledOut(words));
        case SUPPORTS -> Answers.supports(answer, words);
        case CAUTIONS -> Answers.cautions(answer, words);
        case ASK -> Answers.ask(answer, words);
      };
    }

    private static Map<String, List<String>> ruledOut(List<String> words) {
      Map<String, List<String>> map = new LinkedHashMap<>();
      words.forEach(word -> map.put(word, List.of()));
      return map;
    }
  }

  /** Any answer: some of what is right, some of what is not. */
  private static FootAnswer any(FootKey key, Random random) {
    FootAnswer answer = key.model();
    for (Part part : Part.values()) {
      List<String> words = new ArrayList<>(part.of(answer));
      words.removeIf(word -> random.nextInt(3) == 0);
      for (int more = random.nextInt(4); more > 0; more--) {
        String word = part.words.get(random.nextInt(part.words.size()));
        if (!words.contains(word)) {
          words.add(word);
        }
      }
      answer = part.with(answer, words);
    }
    List<String> techniques = Lessons.WORDS.techniquesOrNone();
    String technique = techniques.get(random.nextInt(techniques.size()));
    String vet = Vocabulary.URGENCIES.get(random.nextInt(Vocabulary.URGENCIES.size()));
    return Answers.vet(
        Answers.technique(answer, technique, random.nextBoolean() ? "the owner insists" : null),
        vet,
        answer.vetFor());
  }

  private static Map<MarkedPoint, Double> marks(CaseKey key, FootAnswer answer) {
    return Lessons.marks(key, Lessons.answer(key, answer)).points().stream()
        .filter(one -> one.limb() == answer.limb())
        .collect(Collectors.toMap(PointMarks::point, PointMarks::marks));
  }

  @Property(tries = 400)
  void a_right_item_taken_away_or_a_wrong_one_added_never_raises_any_point(@ForAll long seed) {
    Random random = new Random(seed);
    CaseKey key = KEYS.get(random.nextInt(KEYS.size()));
    List<FootKey> feet = List.copyOf(key.feet().values());
    FootKey foot = feet.get(random.nextInt(feet.size()));
    FootAnswer answer = any(foot, random);
    Part part = Part.values()[random.nextInt(Part.values().length)];
    List<String> said = part.of(answer);
    List<String> right = part.of(foot.model());
    for (String word : said) {
      if (right.contains(word)) {
        assertNoMore(key, answer, part.with(answer, Answers.minus(said, word)));
      }
    }
    String other = part.words.get(random.nextInt(part.words.size()));
    if (!said.contains(other) && !right.contains(other)) {
      assertNoMore(key, answer, part.with(answer, Answers.plus(said, other)));
    }
  }

  private static void assertNoMore(CaseKey key, FootAnswer before, FootAnswer after) {
    Map<MarkedPoint, Double> less = marks(key, after);
    Map<MarkedPoint, Double> more = marks(key, before);
    for (MarkedPoint point : MarkedPoint.values()) {
      assertThat(less.get(point)).as("%s of %s", point, after).isLessThanOrEqualTo(more.get(point));
    }
  }

  @Property(tries = 400)
  void no_point_goes_below_nothing_or_above_all_there_is(@ForAll long seed) {
    Random random = new Random(seed);
    CaseKey key = KEYS.get(random.nextInt(KEYS.size()));
    FootKey foot = key.feet().values().iterator().next();
    AnswerMarks marks = Lessons.marks(key, Lessons.answer(key, any(foot, random)));
    assertThat(marks.points()).allMatch(one -> one.marks() >= 0 && one.marks() <= one.of());
    assertThat(marks.marks()).isBetween(0.0, marks.capped() ? marks.cap() : marks.of());
  }
}
