package hornbook.study.lesson;

import hornbook.assessment.Foot;
import hornbook.assessment.field.FieldValue;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.critique.FootKey;
import hornbook.study.critique.Point;
import hornbook.study.exercise.AskedFields;
import hornbook.study.exercise.DaysUntilVisit;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A case worked through: first the learner looks at what there is, then answers foot by foot, with
 * hints in three steps. It puts a step, takes a line, and says what became of it.
 */
public final class Lesson {
  private static final int HINTS = 3;

  private final Exercise exercise;
  private final CaseKey key;
  private final Looking looking;
  private final List<String> rules;
  private final List<Step> steps = new ArrayList<>();
  private final Map<FootKey, Map<Step.Kind, List<String>>> answers = new HashMap<>();
  private final Map<Integer, Integer> hints = new HashMap<>();
  private int at;

  public Lesson(Exercise exercise, CaseKey key, Vocabulary known) {
    this.exercise = exercise;
    this.key = key;
    this.looking = new Looking(exercise.assessment());
    this.rules = known.rules();
    steps.add(new Step(Step.Kind.LOOK, null, List.of()));
    for (FootKey foot : key.feet().values()) {
      for (Step.Kind kind : Step.Kind.values()) {
        if (kind != Step.Kind.LOOK) {
          steps.add(new Step(kind, foot, words(kind, known)));
        }
      }
    }
  }

  private static List<String> words(Step.Kind kind, Vocabulary known) {
    return switch (kind) {
      case VET -> Vocabulary.URGENCIES;
      case VET_FOR -> known.referrals();
      case FINDINGS -> known.findings();
      case TECHNIQUE -> known.techniquesOrNone();
      case BECAUSE -> known.rules();
      case RULED_OUT ->
          Stream.concat(known.techniques().stream(), known.supports().stream()).toList();
      case SUPPORTS -> known.supports();
      case CAUTIONS -> known.cautions();
      case ASK, LOOK, NEXT_VISIT, DEPARTS -> List.of();
    };
  }

  /** What is asked now; empty at the end. */
  public Optional<Step> step() {
    return at < steps.size() ? Optional.of(steps.get(at)) : Optional.empty();
  }

  /** Takes a line. */
  public LessonReply take(String typed) {
    String line = typed.strip();
    Step step = steps.get(at);
    return switch (line.toLowerCase(Locale.ROOT)) {
      case "stop" -> new LessonReply.Stop();
      case "?" ->
          step.kind() == Step.Kind.LOOK
              ? new LessonReply.Askable(looking.askable())
              : new LessonReply.Help(step);
      case "<" -> back();
      case "hint" -> hint(step);
      default -> step.kind() == Step.Kind.LOOK ? look(line) : answer(step, line);
    };
  }

  private LessonReply back() {
    boolean moves = at > 0;
    at -= moves ? 1 : 0;
    return new LessonReply.Back(moves);
  }

  private LessonReply look(String line) {
    if (line.isEmpty() || line.equalsIgnoreCase("done")) {
      at++;
      return new LessonReply.Taken();
    }
    List<FieldValue> found = looking.of(line);
    return found.isEmpty()
        ? new LessonReply.Refused(
            line, "the name of something to look at; ? lists them", looking.nearest(line))
        : new LessonReply.Seen(found);
  }

  private LessonReply answer(Step step, String line) {
    if (!line.isEmpty()) {
      Typing.Words words =
          switch (step.kind()) {
            case ASK -> asked(step, line);
            case RULED_OUT -> Typing.ruledOut(line, step, rules);
            case NEXT_VISIT -> Typing.days(line);
            case DEPARTS -> new Typing.Words(List.of(line), null);
            default -> Typing.of(line, step);
          };
      if (words.refused() != null) {
        return words.refused();
      }
      answers
          .computeIfAbsent(step.foot(), foot -> new EnumMap<>(Step.Kind.class))
          .put(step.kind(), words.words());
    }
    at++;
    return new LessonReply.Taken();
  }

  private Typing.Words asked(Step step, String line) {
    if (line.equalsIgnoreCase(Vocabulary.NONE)) {
      return new Typing.Words(List.of(), null);
    }
    List<Foot> feet = exercise.assessment().feet();
    List<String> paths = new ArrayList<>();
    for (String part : line.split("[,;]")) {
      String path = AskedFields.path(part.strip(), feet, step.foot().foot().index());
      if (path == null) {
        String nearest = looking.nearest(part.strip());
        return new Typing.Words(
            List.of(), new LessonReply.Refused(part.strip(), "a field, such as hoofHeat", nearest));
      }
      paths.add(path);
    }
    return new Typing.Words(List.copyOf(paths), null);
  }

  private LessonReply hint(Step step) {
    if (step.kind() == Step.Kind.LOOK) {
      return new LessonReply.Hint(1, step, weighty());
    }
    if (step.kind() == Step.Kind.DEPARTS) {
      return new LessonReply.Help(step);
    }
    int level = Math.min(HINTS, hints.merge(at, 1, Integer::sum));
    return new LessonReply.Hint(level, step, evidence(step.foot(), step));
  }

  /** The rules behind what the full answer says at a step. */
  private static List<LessonReply.OfFoot> evidence(FootKey foot, Step step) {
    FootAnswer blank = FootAnswer.blank(foot.foot().limb());
    return Critic.of(foot, blank).about(step.kind().about()).stream()
        .filter(Point::key)
        .flatMap(point -> point.evidence().stream())
        .distinct()
        .map(one -> new LessonReply.OfFoot(foot.foot(), one))
        .toList();
  }

  private List<LessonReply.OfFoot> weighty() {
    List<LessonReply.OfFoot> all = new ArrayList<>();
    for (Step step : steps) {
      if (step.kind() == Step.Kind.VET || step.kind() == Step.Kind.TECHNIQUE) {
        all.addAll(evidence(step.foot(), step));
      }
    }
    return all;
  }

  /** How many hints were taken. */
  public int hints() {
    return hints.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The answer as given so far. */
  public LearnerAnswer answer() {
    List<FootAnswer> feet = new ArrayList<>();
    for (FootKey foot : key.feet().values()) {
      Map<Step.Kind, List<String>> given = answers.getOrDefault(foot, Map.of());
      feet.add(
          new FootAnswer(
              foot.foot().limb(),
              given.get(Step.Kind.FINDINGS),
              one(given.get(Step.Kind.VET)),
              given.get(Step.Kind.VET_FOR),
              one(given.get(Step.Kind.TECHNIQUE)),
              given.get(Step.Kind.BECAUSE),
              ruledOut(given.get(Step.Kind.RULED_OUT)),
              given.get(Step.Kind.SUPPORTS),
              given.get(Step.Kind.CAUTIONS),
              given.get(Step.Kind.ASK),
              days(given.get(Step.Kind.NEXT_VISIT)),
              one(given.get(Step.Kind.DEPARTS))));
    }
    return new LearnerAnswer(null, exercise.name(), List.copyOf(feet));
  }

  private static String one(List<String> words) {
    return words == null || words.isEmpty() ? null : words.get(0);
  }

  private static Map<String, List<String>> ruledOut(List<String> words) {
    if (words == null) {
      return null;
    }
    Map<String, List<String>> ruledOut = new LinkedHashMap<>();
    for (String word : words) {
      List<String> parts = List.of(word.split(" "));
      ruledOut.put(parts.get(0), parts.subList(1, parts.size()));
    }
    return ruledOut;
  }

  private static Double days(List<String> words) {
    return words == null ? null : DaysUntilVisit.of(words.get(0));
  }

  /** What the answer rests on and the learner never asked to see, by path. */
  public List<String> notLookedAt() {
    Set<String> deciding = new LinkedHashSet<>();
    weighty().forEach(one -> deciding.addAll(RestsOn.paths(one.evidence(), one.foot())));
    Set<String> known = new LinkedHashSet<>();
    looking.known().forEach(one -> known.add(one.path()));
    return deciding.stream()
        .map(path -> path.replaceFirst("(\\.(wall|cracks))\\[.*", "$1"))
        .distinct()
        .filter(path -> known.stream().anyMatch(one -> within(one, path)))
        .filter(path -> looking.looked().stream().noneMatch(one -> within(one, path)))
        .toList();
  }

  private static boolean within(String path, String list) {
    return path.equals(list) || path.startsWith(list + "[");
  }
}
