package hornbook.interview;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.WordList;
import hornbook.assessment.word.Word;
import java.util.List;
import java.util.stream.Collectors;

/** Answers an interview from what is known of a horse. */
final class Farrier {
  private final Assessment knows;

  Farrier(Assessment knows) {
    this.knows = knows;
  }

  String answer(InterviewQuestion ask, Interview interview) {
    return switch (ask.form()) {
      case FEET ->
          knows.feet().stream().map(foot -> foot.limb().word()).collect(Collectors.joining(", "));
      case CRACKS -> {
        List<?> cracks = (List<?>) value(ask);
        yield cracks == null ? "unknown" : Integer.toString(cracks.size());
      }
      case STRETCH_END -> stretchEnd(ask);
      case FIELD -> {
        Object value = ask.path().contains(".wall[") ? ofStretch(ask, interview) : value(ask);
        yield value == null ? "" : written(ask, value);
      }
    };
  }

  private Object value(InterviewQuestion ask) {
    return InterviewPaths.value(knows, ask.path());
  }

  private String stretchEnd(InterviewQuestion ask) {
    for (WallStretch stretch : wall(ask)) {
      if (stretch.side() == ask.side() && stretch.from() == ask.from()) {
        return stretch.to() + " mm";
      }
    }
    return "";
  }

  /** The rows of an interview come side by side, those of the file perhaps in another order. */
  private Object ofStretch(InterviewQuestion ask, Interview interview) {
    int row = Integer.parseInt(ask.path().replaceAll(".*\\.wall\\[(\\d+)].*", "$1"));
    WallStretch asked = foot(ask, interview.known()).wall().get(row);
    List<WallStretch> wall = wall(ask);
    for (int i = 0; i < wall.size(); i++) {
      if (wall.get(i).side() == asked.side() && wall.get(i).from().equals(asked.from())) {
        return InterviewPaths.value(
            knows, ask.path().replaceAll("wall\\[\\d+]", "wall[" + i + "]"));
      }
    }
    return null;
  }

  private List<WallStretch> wall(InterviewQuestion ask) {
    List<WallStretch> wall = foot(ask, knows).wall();
    return wall == null ? List.of() : wall;
  }

  private static Foot foot(InterviewQuestion ask, Assessment assessment) {
    return assessment.feet().get(Integer.parseInt(ask.path().replaceAll("^feet\\[(\\d)].*", "$1")));
  }

  private static String written(InterviewQuestion ask, Object value) {
    if (ask.field().kind() instanceof WordList) {
      List<?> words = (List<?>) value;
      return words.isEmpty()
          ? "none"
          : words.stream().map(word -> ((Word) word).word()).collect(Collectors.joining(", "));
    }
    ScalarKind kind = (ScalarKind) ask.field().kind();
    return kind instanceof Amount amount ? amount.write(value) : kind.write(value);
  }
}
