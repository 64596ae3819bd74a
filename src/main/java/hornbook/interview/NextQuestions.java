package hornbook.interview;

import hornbook.advice.Question;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The questions an assessment leaves open, the worthiest first, then as a farrier looks. */
final class NextQuestions {
  private static final String WEIGHT = "horse.weight";
  private static final List<String> ESTIMATE = List.of("horse.girth", "horse.bodyLength");

  /** What is made of a map of the wall hangs on the length of the edge, and on cracks found. */
  private static final List<String> BESIDE_WALL =
      List.of("measures.bearingLength", "measures.width", "measures.toeToWidest", "cracks");

  /** Of equal worth comes first what needs no other answer beside it. */
  private static final Comparator<Question> WORTH =
      Comparator.comparing(Question::worth).thenComparing(question -> !question.alone());

  private final Advisor advisor;
  private final Set<Limb> feet;

  /**
   * @param feet those to be advised on; others are there to be compared with them
   */
  NextQuestions(Advisor advisor, Set<Limb> feet) {
    this.advisor = advisor;
    this.feet = feet;
  }

  /** Every question that could still change the advice, of what was not passed over. */
  List<Question> open(InterviewState state) {
    Assessment known = state.known();
    Map<String, Question> open = new LinkedHashMap<>();
    List<List<Question>> asked = advisor.questions(known);
    for (int foot = 0; foot < asked.size(); foot++) {
      if (feet.contains(known.feet().get(foot).limb())) {
        for (Question question : asked.get(foot)) {
          if (question.worth().changesAdvice()) {
            for (String path : before(foot, question.field(), state)) {
              add(open, path, question, state);
            }
          }
        }
      }
    }
    Map<String, String> order = new HashMap<>();
    open.keySet().forEach(field -> order.put(field, InterviewPaths.order(known, field)));
    List<Question> sorted = new ArrayList<>(open.values());
    sorted.sort(WORTH.thenComparing(question -> order.get(question.field())));
    return sorted;
  }

  /** What has to be asked for a field: itself, what goes with it, or what stands in for it. */
  private static List<String> before(int foot, String field, InterviewState state) {
    List<String> paths = new ArrayList<>();
    if (field.equals(InterviewPaths.foot(foot) + "wall")) {
      BESIDE_WALL.forEach(measure -> paths.add(InterviewPaths.foot(foot) + measure));
    }
    if (field.equals(WEIGHT) && state.passedOver(WEIGHT)) {
      paths.addAll(ESTIMATE);
    }
    paths.add(field);
    return paths;
  }

  private static void add(
      Map<String, Question> open, String path, Question question, InterviewState state) {
    String field = InterviewPaths.numbered(state.known(), path);
    boolean known = InterviewPaths.value(state.known(), field) != null;
    boolean map = field.endsWith(".wall");
    if (state.passedOver(field) || known && !map) {
      return;
    }
    Question own =
        new Question(
            field,
            question.why(),
            question.couldChange(),
            question.urgency(),
            question.worth(),
            question.alone());
    open.merge(field, own, (one, other) -> WORTH.compare(one, other) <= 0 ? one : other);
  }
}
