package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Fault;
import hornbook.rules.Shipped;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.FootKey;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.ExerciseLibrary;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.exercise.Vocabulary;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The shipped library with its keys and scheme, read once for all tests. */
public final class Lessons {
  public static final Vocabulary WORDS = Vocabulary.of(Shipped.BOOK);
  public static final Map<String, Exercise> CASES;
  public static final MarkingScheme SCHEME;
  public static final Map<String, CaseKey> KEYS;

  static {
    try {
      CASES = ExerciseLibrary.read(Shipped.EXERCISES, WORDS).cases();
      List<Fault> faults = new ArrayList<>();
      Path scheme = Path.of("cases/marking.yaml");
      SCHEME = SchemeReader.read(Files.readAllBytes(scheme), scheme.toString(), faults);
      assertThat(faults).extracting(Fault::message).isEmpty();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    KEYS =
        CASES.values().stream()
            .collect(Collectors.toMap(Exercise::name, one -> CaseKey.of(one, Shipped.ADVISOR)));
  }

  private Lessons() {}

  public static CaseKey key(Assessment assessment) {
    return CaseKey.of(assessment, Shipped.ADVISOR);
  }

  public static LearnerAnswer model(CaseKey key) {
    return new LearnerAnswer(
        "1", key.name(), key.feet().values().stream().map(FootKey::model).toList());
  }

  public static LearnerAnswer answer(CaseKey key, FootAnswer... feet) {
    return new LearnerAnswer("1", key.name(), List.of(feet));
  }

  public static AnswerMarks marks(CaseKey key, LearnerAnswer answer) {
    return new Marker(SCHEME).mark(key, answer);
  }
}
