package hornbook.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.practice.LimitAmount;
import hornbook.rulebook.practice.PracticeReader;
import hornbook.rulebook.practice.ReferralLimits;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever practice is accepted, every foot can still be advised on. */
class AnyPracticeTest {
  private static final List<Assessment> FEET = feet();

  @Property(tries = 40)
  void every_exercise_can_be_advised_on(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder file =
        new StringBuilder(
            "format: hornbook-practice/1\nname: y\nby: y\ndate: 2026-03-14\nlimits:\n");
    for (String id : Shipped.BOOK.limits().stream().map(Limit::id).distinct().toList()) {
      Limit limit =
          Shipped.BOOK.limits().stream().filter(one -> one.id().equals(id)).findFirst().get();
      LimitAmount bounds = new LimitAmount(limit);
      boolean mild = random.nextBoolean();
      double near = limit.value() + limit.step() * (random.nextInt(7) - 3);
      double far = bounds.least() + (bounds.most() - bounds.least()) * random.nextDouble();
      double value = limit.step() == 1 ? Math.rint(mild ? near : far) : mild ? near : far;
      boolean safer =
          limit.safer() == Limit.Safer.NEITHER && !limit.computing()
              || limit.safer() != Limit.Safer.NEITHER
                  && (limit.safer() == Limit.Safer.UP) == (value > limit.value());
      boolean free = safer || !ReferralLimits.of(Shipped.BOOK).contains(id);
      boolean within = value >= bounds.least() && value <= bounds.most();
      if (free && within && value != limit.value() && random.nextInt(4) == 0) {
        file.append("  - {id: ").append(id).append(", reason: r, value: ");
        file.append(new java.math.BigDecimal(value).toPlainString()).append("}\n");
      }
    }
    List<Fault> faults = new ArrayList<>();
    byte[] bytes = file.toString().getBytes(StandardCharsets.UTF_8);
    Practice practice = PracticeReader.read(bytes, "y", Shipped.BOOK, true, faults);
    if (practice != null) {
      LoadedRules rules = Shipped.RULES.under(Shipped.BOOK.under(practice));
      Advisor advisor = new Advisor(rules);
      for (Assessment foot : FEET) {
        assertThat(advisor.advise(foot).feet()).hasSameSizeAs(foot.feet());
      }
    }
  }

  private static List<Assessment> feet() {
    List<Assessment> feet = new ArrayList<>();
    try {
      for (Path file : Shipped.files(Shipped.EXERCISES)) {
        byte[] bytes = Files.readAllBytes(file);
        ReadResult read = AssessmentReader.read(bytes, file.toString(), List.of());
        feet.add(((ReadResult.Good) read).assessment());
      }
    } catch (java.io.IOException unreadable) {
      throw new AssertionError(unreadable);
    }
    return feet;
  }
}
