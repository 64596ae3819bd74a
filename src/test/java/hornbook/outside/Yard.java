package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.fact.Bearing;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** One foot as a book or a paper describes it, put before the shipped rule base. */
final class Yard {
  private Yard() {}

  /** The advice on the only foot of an assessment written without its first line. */
  static FootAdvice advise(String assessment) {
    byte[] file = ("format: hornbook-assessment/1\n" + assessment).getBytes(StandardCharsets.UTF_8);
    ReadResult read = AssessmentReader.read(file, "outside check", List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment()).feet().get(0);
  }

  /** A sound foot with one crack, written as {@code place: toe, starts: full}. */
  static FootAdvice crack(String limb, String crack) {
    return advise("feet: [{limb: %s, lameness: 0, cracks: [{%s}]}]".formatted(limb, crack));
  }

  /** A foot last done so many days ago, the horse and the foot with whatever else is known. */
  static FootAdvice after(int days, String horse, String foot) {
    return advise(
        """
        horse: {%s}
        visit: {shodDaysAgo: %d}
        feet: [{limb: left-fore%s}]
        """
            .formatted(horse, days, foot));
  }

  static Set<String> cautions(FootAdvice foot) {
    Set<String> ids = new TreeSet<>();
    foot.cautions().forEach(caution -> ids.add(caution.id()));
    return ids;
  }

  /** What the caution says, its holes unfilled. */
  static String says(FootAdvice foot, String caution) {
    return foot.cautions().stream()
        .filter(one -> one.id().equals(caution))
        .map(CautionGiven::says)
        .map(says -> says.template())
        .findFirst()
        .orElse("");
  }

  /** Whether anything bears on a technique or support in this way. */
  static boolean has(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream().anyMatch(reason -> reason.bearing() == bearing);
  }
}
