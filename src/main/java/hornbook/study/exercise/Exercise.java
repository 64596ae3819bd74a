package hornbook.study.exercise;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.read.ReadResult;
import java.util.List;
import java.util.Map;

/**
 * A teaching case.
 *
 * @param name the name of its file without the ending, by which commands know it
 * @param file as the user named it, or where it lies in the library
 * @param story what a person at the horse would see and be told, without a conclusion
 * @param level 1 for beginners to 3
 * @param topics topics of the rule base it teaches
 * @param pair the case that differs from it in one fact and in the answer, or null
 * @param expected foot by foot; a foot that is not in it is not marked
 * @param differs where other authors would choose otherwise
 * @param asks what a teacher asks about it
 * @param notes what it teaches
 */
public record Exercise(
    String name,
    String file,
    String title,
    String story,
    int level,
    List<String> topics,
    String pair,
    ReadResult.Good read,
    Map<Limb, Expected> expected,
    List<OtherView> differs,
    List<String> asks,
    List<String> notes) {
  public Assessment assessment() {
    return read.assessment();
  }

  /** What a learner knows it by: the horse and the feet, for a title may say too much. */
  public String shownTitle() {
    String horse = assessment().horse().name();
    List<String> feet =
        expected.keySet().stream().map(limb -> limb.word().replace('-', ' ')).toList();
    return (horse == null ? name : horse) + ": " + String.join(", ", feet);
  }

  /** What other authors would do on a foot. */
  public List<OtherView> differs(Limb foot) {
    return differs.stream().filter(view -> view.foot() == foot).toList();
  }
}
