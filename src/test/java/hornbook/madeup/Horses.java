package hornbook.madeup;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.VetRole;
import hornbook.plan.sheet.Technique;
import hornbook.rules.Shipped;
import hornbook.study.generate.GeneratedFeet;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Made-up horses with up to four feet: the first foot's horse and visit, and the feet of others
 * beside it. A horse is known by its number alone. {@code -Dhornbook.madeup=100000} makes more.
 */
final class Horses {
  static final int HOW_MANY = Integer.getInteger("hornbook.madeup", 1000);

  private final GeneratedFeet paper;

  Horses(long seed) throws IOException, RuleCase.Unusable {
    List<Assessment> cases =
        Shipped.ruleCases().values().stream().map(RuleCase::assessment).toList();
    paper = new GeneratedFeet(Shipped.BOOK, cases, seed);
  }

  /** Hands over every horse, on several threads. */
  void each(Consumer<Assessment> to) {
    IntStream.range(0, HOW_MANY).parallel().mapToObj(this::horse).forEach(to);
  }

  Assessment horse(int number) {
    Assessment first = paper.foot(4 * number);
    List<Foot> feet = new ArrayList<>(first.feet());
    for (int more = 1; more <= number % 4; more++) {
      Set<Object> taken = feet.stream().map(Foot::limb).collect(Collectors.toSet());
      paper.foot(4 * number + more).feet().stream()
          .filter(foot -> !taken.contains(foot.limb()))
          .limit(1)
          .forEach(feet::add);
    }
    return new Assessment(first.units(), first.horse(), first.visit(), feet, first.kit());
  }

  /** Whether a vet has the case in hand. */
  static boolean directed(Assessment horse) {
    return horse.visit().vet() == VetRole.DIRECTING;
  }

  /** The technique whose sheet is written for a horse: all of them in turn, by the horse alone. */
  static Technique technique(Assessment horse) {
    Technique[] all = Technique.values();
    return all[Math.floorMod(horse.hashCode(), all.length)];
  }
}
