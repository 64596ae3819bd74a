package hornbook.cli.option;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which of the feet is meant. */
public final class FootOption {
  private final ArgumentValue<Limb> limb;

  public FootOption(Arguments arguments) {
    this(arguments, "the foot meant; without it every foot");
  }

  public FootOption(Arguments arguments, String description) {
    limb = arguments.word(Limb.class, null, description, "--foot");
  }

  /**
   * The place of the one foot meant.
   *
   * @throws Failure when the assessment has no such foot, or several and none is named
   */
  public int one(Assessment assessment) {
    List<Integer> places = of(assessment);
    if (places.size() > 1) {
      throw Failure.usage(
          "the file has several feet",
          "say which: "
              + assessment.feet().stream()
                  .map(foot -> "--foot " + foot.limb().word())
                  .collect(Collectors.joining(", ")));
    }
    return places.get(0);
  }

  /**
   * The places of the feet meant: the one named, or all.
   *
   * @throws Failure when the assessment has no such foot
   */
  public List<Integer> of(Assessment assessment) {
    List<Integer> places = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int at = 0; at < assessment.feet().size(); at++) {
      Foot foot = assessment.feet().get(at);
      words.add(foot.limb().word());
      if (limb.value() == null || foot.limb() == limb.value()) {
        places.add(at);
      }
    }
    if (places.isEmpty()) {
      throw Failure.usage(
          "there is no " + limb.value().word() + " in this assessment",
          "its feet: " + String.join(", ", words));
    }
    return places;
  }
}
