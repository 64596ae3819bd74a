package hornbook.study.generate;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.word.Word;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws a foot field by field from the table of fields; what is not drawn was not looked at. */
final class RandomFoot {
  private static final double KNOWN = 0.6;
  private static final double ABOUT_A_LIMIT = 0.5;

  /** How far a drawn number strays from the example of the table, either way. */
  private static final double SPREAD = 0.35;

  /** Ages are drawn in years or in days, never both; dates and names bear on no rule. */
  private static final List<String> LEFT_OUT = List.of("horse.ageDays", "horse.ageYears");

  private final Map<String, List<Limit>> limits = new HashMap<>();
  private final Map<Limb, Assessment> blanks = new HashMap<>();

  RandomFoot(Rulebook book) {
    for (RuleEntry rule : book.rules().values()) {
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfReading reading) {
          String id = rule.limitBoundTo(reading.limit());
          for (Limit limit : book.limits()) {
            if (limit.id().equals(id)) {
              limits.computeIfAbsent(reading.what(), key -> new ArrayList<>()).add(limit);
            }
          }
        }
      }
    }
    for (Limb limb : Limb.values()) {
      blanks.put(limb, blank(limb));
    }
  }

  private static Assessment blank(Limb limb) {
    String text =
        "format: %s\nfeet: [{limb: %s}, {limb: %s}]\n"
            .formatted(Fields.FORMAT, limb.word(), limb.pair().word());
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ((ReadResult.Good) AssessmentReader.read(bytes, "blank", List.of())).assessment();
  }

  Assessment foot(UniformRandomProvider random) {
    Limb limb = Limb.values()[random.nextInt(Limb.values().length)];
    Assessment foot = blanks.get(limb);
    for (FieldValue field : Fields.values(foot).toList()) {
      boolean drawn = random.nextDouble() < KNOWN;
      Object value = drawn ? value(field.field(), random) : null;
      if (value != null && field.value() == null && !LEFT_OUT.contains(field.path())) {
        foot = AssessmentEdit.of(field.path()).with(foot, value);
      }
    }
    foot = aged(foot, random);
    return RandomWall.on(foot, random);
  }

  private static Assessment aged(Assessment foot, UniformRandomProvider random) {
    return switch (random.nextInt(4)) {
      case 0 -> foot;
      case 1 -> AssessmentEdit.of("horse.ageDays").with(foot, random.nextInt(400));
      default -> AssessmentEdit.of("horse.ageYears").with(foot, 1 + random.nextInt(25));
    };
  }

  private Object value(Field field, UniformRandomProvider random) {
    if (field.kind() instanceof OneWord word) {
      return word.options().get(random.nextInt(word.options().size()));
    }
    if (field.kind() instanceof WordList list) {
      List<Word> words = new ArrayList<>(list.each().options());
      words.removeIf(word -> random.nextInt(words.size()) > 0);
      return List.copyOf(words);
    }
    if (field.kind() instanceof Flag) {
      return random.nextBoolean();
    }
    if (field.kind() instanceof WholeNumber whole) {
      int most = Math.min(whole.most(), whole.least() + 60);
      Limit limit = limitOn(field, random);
      int about = limit == null ? 0 : (int) limit.value() + random.nextInt(3) - 1;
      boolean fits = limit != null && about >= whole.least() && about <= whole.most();
      return fits ? about : whole.least() + random.nextInt(most - whole.least() + 1);
    }
    return field.kind() instanceof Amount amount ? amount(field, amount, random) : null;
  }

  private Double amount(Field field, Amount amount, UniformRandomProvider random) {
    Limit limit = limitOn(field, random);
    double usual = amount.bare().toKept(amount.example());
    double strayed = usual * (1 + SPREAD * (2 * random.nextDouble() - 1));
    double drawn = limit == null ? strayed : limit.value() + limit.step() * (random.nextInt(5) - 2);
    double rounded = Math.rint(drawn * 10) / 10;
    return Math.min(amount.mostKept(), Math.max(amount.leastKept(), rounded));
  }

  /** Half the time one of the limits that some rule holds the field against, else null. */
  private Limit limitOn(Field field, UniformRandomProvider random) {
    List<Limit> on = limits.getOrDefault(field.name(), List.of());
    boolean take = random.nextDouble() < ABOUT_A_LIMIT;
    return on.isEmpty() || !take ? null : on.get(random.nextInt(on.size()));
  }
}
