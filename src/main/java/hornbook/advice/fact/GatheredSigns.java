package hornbook.advice.fact;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Signs;
import hornbook.assessment.word.DigitalPulse;
import hornbook.assessment.word.Drainage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * Words that need more than one field or foot: heat and pulse of the other feet, whether the other
 * foot of the pair is quiet, and whether pus was seen to drain as a lame horse went easier.
 */
final class GatheredSigns {
  private static final String HEAT = "hoofHeat";
  private static final String PULSE = "digitalPulse";

  private final Assessment assessment;
  private final Foot foot;
  private final String path;

  /**
   * A word told of the foot.
   *
   * @param word null while it is not known
   * @param fields the paths it rests on, or those that would tell
   */
  record Word(String what, String word, List<String> fields) {}

  /**
   * @param path of the foot in the file
   */
  GatheredSigns(Assessment assessment, Foot foot, String path) {
    this.assessment = assessment;
    this.foot = foot;
    this.path = path;
  }

  List<Word> words() {
    return List.of(otherHeat(), otherPulse(), pairQuiet(), easeWithPus());
  }

  private Word otherHeat() {
    List<Limb> hot = others().filter(limb -> Boolean.TRUE.equals(heat(limb))).toList();
    return hot.isEmpty()
        ? noneOfThem("otherHeat", HEAT, "no", this::heat)
        : new Word("otherHeat", "yes", List.of(at(hot.get(0), HEAT)));
  }

  /** A bounding pulse is the strongest there is; anything less needs every foot felt. */
  private Word otherPulse() {
    DigitalPulse strongest =
        others()
            .map(this::pulse)
            .filter(Objects::nonNull)
            .max(DigitalPulse::compareTo)
            .orElse(null);
    if (strongest == DigitalPulse.BOUNDING) {
      Limb limb = others().filter(one -> pulse(one) == strongest).findFirst().orElseThrow();
      return new Word("otherPulse", strongest.word(), List.of(at(limb, PULSE)));
    }
    String word = strongest == null ? null : strongest.word();
    return noneOfThem("otherPulse", PULSE, word, this::pulse);
  }

  /**
   * The word that holds once the other foot of the pair was felt: of the hind feet none is asked.
   */
  private Word noneOfThem(String what, String field, String word, Function<Limb, Object> known) {
    Limb pair = foot.limb().pair();
    return new Word(what, known.apply(pair) == null ? null : word, List.of(at(pair, field)));
  }

  private Word pairQuiet() {
    Limb pair = foot.limb().pair();
    Boolean heat = heat(pair);
    DigitalPulse pulse = pulse(pair);
    if (Boolean.TRUE.equals(heat) || pulse != null && pulse != DigitalPulse.NORMAL) {
      String field = Boolean.TRUE.equals(heat) ? HEAT : PULSE;
      return new Word("pairQuiet", "no", List.of(at(pair, field)));
    }
    List<String> unseen = new ArrayList<>();
    if (heat == null) {
      unseen.add(at(pair, HEAT));
    }
    if (pulse == null) {
      unseen.add(at(pair, PULSE));
    }
    return unseen.isEmpty()
        ? new Word("pairQuiet", "yes", List.of(at(pair, PULSE)))
        : new Word("pairQuiet", null, unseen);
  }

  /** Pus that nobody looked for was not seen to drain. */
  private Word easeWithPus() {
    String ease = path + ".signs.suddenEase";
    if (!Boolean.TRUE.equals(foot.signs().suddenEase())) {
      return new Word(
          "easeWithPus", foot.signs().suddenEase() == null ? null : "none", List.of(ease));
    }
    Drainage drains = foot.signs().drainage();
    boolean pus = drains != null && drains != Drainage.NONE;
    return new Word("easeWithPus", pus ? "yes" : "no", List.of(ease));
  }

  private java.util.stream.Stream<Limb> others() {
    return Arrays.stream(Limb.values()).filter(limb -> limb != foot.limb());
  }

  private Boolean heat(Limb limb) {
    return assessment.foot(limb).map(Foot::signs).map(Signs::hoofHeat).orElse(null);
  }

  private DigitalPulse pulse(Limb limb) {
    return assessment.foot(limb).map(Foot::signs).map(Signs::digitalPulse).orElse(null);
  }

  private static String at(Limb limb, String field) {
    return "feet[" + limb.word() + "].signs." + field;
  }
}
