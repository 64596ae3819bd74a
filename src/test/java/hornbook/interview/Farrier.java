package hornbook.interview;

import hornbook.assessment.Amount;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.ScalarKind;
import hornbook.assessment.Stretch;
import hornbook.assessment.Word;
import hornbook.assessment.WordList;
import java.util.List;
import java.util.stream.Collectors;

/** Answers an interview from what is known of a horse. */
final class Farrier {
  private final Assessment knows;

  Farrier(Assessment knows) {
    this.knows = knows;
  }

  String answer(Ask ask, Interview interview) {
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

  private Object value(Ask ask) {
    return Paths.value(knows, ask.path());
  }

  private String stretchEnd(Ask ask) {
    for (Stretch stretch : wall(ask)) {
      if (stretch.side() == ask.side() && stretch.from() == ask.from()) {
        return stretch.to() + " mm";
      }
    }
    return "";
  }

  /** The rows of an interview come side by side, those of the file perhaps in another order. */
  private Object ofStretch(Ask ask, Interview interview) {
    int row = Integer.parseInt(ask.path().replaceAll(".*\\.wall\\[(\\d+)].*", "$1"));
    Stretch asked = foot(ask, interview.known()).wall().get(row);
    List<Stretch> wall = wall(ask);
    for (int i = 0; i < wall.size(); i++) {
      if (wall.get(i).side() == asked.side() && wall.get(i).from().equals(asked.from())) {
        return Paths.value(knows, ask.path().replaceAll("wall\\[\\d+]", "wall[" + i + "]"));
      }
    }
    return null;
  }

  private List<Stretch> wall(Ask ask) {
    List<Stretch> wall = foot(ask, knows).wall();
    return wall == null ? List.of() : wall;
  }

  private static Foot foot(Ask ask, Assessment assessment) {
    return assessment.feet().get(Integer.parseInt(ask.path().replaceAll("^feet\\[(\\d)].*", "$1")));
  }

  private static String written(Ask ask, Object value) {
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
