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
import java.util.EnumMap;
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
  private final Map<Limb, Blank> blanks = new EnumMap<>(Limb.class);

  /** A foot of which nothing is known, and its fields with the change of each that may be drawn. */
  private record Blank(Assessment foot, List<FieldValue> fields, List<AssessmentEdit> edits) {
    static Blank of(Assessment foot) {
      List<FieldValue> fields = Fields.values(foot).toList();
      List<AssessmentEdit> edits = new ArrayList<>();
      for (FieldValue field : fields) {
        boolean open = field.value() == null && !LEFT_OUT.contains(field.path());
        edits.add(open ? AssessmentEdit.of(field.path()) : null);
      }
      return new Blank(foot, fields, edits);
    }
  }

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
      blanks.put(limb, Blank.of(blank(limb)));
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
    Blank blank = blanks.get(limb);
    Assessment foot = blank.foot();
    for (int at = 0; at < blank.fields().size(); at++) {
      boolean drawn = random.nextDouble() < KNOWN;
      Object value = drawn ? value(blank.fields().get(at).field(), random) : null;
      if (value != null && blank.edits().get(at) != null) {
        foot = blank.edits().get(at).with(foot, value);
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
