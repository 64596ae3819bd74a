package hornbook.report.classroom;

import hornbook.study.critique.About;
import hornbook.study.exercise.Vocabulary;
import hornbook.study.marking.ClassAnalysis.Missed;

/** What learners missed or had wrong, in words: who reads it was not there. */
final class MissedWords {
  private MissedWords() {}

  static String of(Missed one, CritiqueWords words) {
    String name = words.name(one.about(), one.subject());
    String said = one.verdict().wrong() ? wrong(one, name) : left(one, name);
    return said + (one.verdict().dangerous() ? ": dangerous" : "");
  }

  private static boolean nothing(Missed one) {
    return one.about() == About.TECHNIQUE && one.subject().equals(Vocabulary.NONE);
  }

  private static boolean soon(Missed one) {
    return Vocabulary.URGENCIES.contains(one.subject());
  }

  private static String left(Missed one, String name) {
    return switch (one.about()) {
      case VET ->
          (soon(one) ? "did not ask for " : "did not name as a reason to call the vet: ") + name;
      case TECHNIQUE ->
          nothing(one) ? "did not leave the foot as it is today" : "did not choose " + name;
      case REASON -> "did not give the reason: " + name;
      case RULED_OUT -> "did not rule out " + name;
      case SUPPORT -> "left out " + name;
      case FINDING -> "did not find: " + name;
      case CAUTION -> "left out the caution: " + name;
      case QUESTION -> "did not ask for: " + name;
      case NEXT_VISIT -> "did not come again in " + name;
    };
  }

  private static String wrong(Missed one, String name) {
    return switch (one.about()) {
      case VET ->
          soon(one)
              ? "asked for " + name + " without need"
              : "named a danger that nothing shows: " + name;
      case TECHNIQUE -> nothing(one) ? "left the foot as it is today" : "chose " + name;
      case REASON -> "gave a reason that does not hold here: " + name;
      case RULED_OUT -> "ruled out " + name + ", which may be used here";
      case SUPPORT -> "added " + name;
      case FINDING -> "found what is not there: " + name;
      case CAUTION -> "gave a caution that does not belong here: " + name;
      case QUESTION -> "asked for what is known or changes nothing: " + name;
      case NEXT_VISIT -> "came again only in " + name;
    };
  }
}
