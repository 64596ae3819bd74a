package hornbook.cli.record;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.option.NamedArgument;
import hornbook.rulebook.Rulebook;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was chosen, on which foot. */
final class ChoiceOption {
  private final ArgumentValue<List<String>> chosen;
  private final ArgumentValue<Limb> foot;

  ChoiceOption(Arguments arguments) {
    chosen =
        arguments.texts(
            "TECHNIQUE",
            "what was chosen, by id or name, or none; with several feet once for each: left-fore=glue-on",
            "--chose");
    foot = arguments.word(Limb.class, null, "the foot, if the file has several", "--foot");
  }

  boolean given() {
    return !chosen.value().isEmpty();
  }

  /** Technique by the word of the limb, in the order of the assessment's feet. */
  Map<String, String> of(Assessment assessment, Rulebook book) {
    List<String> limbs = assessment.feet().stream().map(Foot::limb).map(Limb::word).toList();
    Map<String, String> named = new LinkedHashMap<>();
    for (String one : chosen.value()) {
      int equals = one.indexOf('=');
      String limb = equals < 0 ? only(limbs) : limb(one.substring(0, equals).strip());
      String technique =
          NamedArgument.whole(one.substring(equals + 1), "technique", Labels.named(book));
      if (!limbs.contains(limb)) {
        throw Failure.usage(
            "there is no " + limb + " in this assessment", "its feet: " + String.join(", ", limbs));
      }
      if (named.put(limb, technique) != null) {
        throw Failure.usage("--chose is given twice for " + limb, "one for each foot");
      }
    }
    if (named.isEmpty()) {
      throw Failure.usage("--chose is missing", "allowed: " + String.join(", ", Labels.all(book)));
    }
    Map<String, String> inOrder = new LinkedHashMap<>();
    limbs.stream().filter(named::containsKey).forEach(limb -> inOrder.put(limb, named.get(limb)));
    return inOrder;
  }

  /** The usual word for a limb, whichever way it is spelt. */
  private static String limb(String spelt) {
    for (Limb one : Limb.values()) {
      if (one.spelt(spelt)) {
        return one.word();
      }
    }
    return spelt;
  }

  private String only(List<String> limbs) {
    if (foot.value() != null) {
      return foot.value().word();
    }
    if (limbs.size() > 1) {
      throw Failure.usage(
          "the file has several feet",
          "say which: --foot " + String.join(" or --foot ", limbs),
          "or for each: --chose " + limbs.get(0) + "=... --chose " + limbs.get(1) + "=...");
    }
    return limbs.get(0);
  }
}
