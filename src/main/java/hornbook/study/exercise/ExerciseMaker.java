package hornbook.study.exercise;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrasts;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;

/**
 * Draws new cases: a given case with the least that turns its answer, or a foot that lies at, just
 * under or just over a limit of a rule. The same seed draws the same case.
 */
public final class ExerciseMaker {
  private static final int TURNS = 12;
  private static final int TRIES = 40;

  /** What has to come from one foot, or it would contradict itself. */
  private static final Set<String> OF_A_PIECE =
      Set.of("wall", "cracks", "measures.bearingLength", "measures.width", "measures.toeToWidest");

  private static final List<String> NAMES =
      List.of(
          "Alder",
          "Bracken",
          "Clover",
          "Dunlin",
          "Eyebright",
          "Fennel",
          "Gorse",
          "Hazel",
          "Ivy",
          "Knapweed",
          "Linnet",
          "Mallow",
          "Nettle",
          "Orchid",
          "Plover",
          "Rush",
          "Sedge",
          "Teasel",
          "Vetch",
          "Yarrow");

  private final Advisor advisor;
  private final UniformRandomProvider random;

  public ExerciseMaker(Advisor advisor, long seed) {
    this.advisor = advisor;
    this.random = new SplitMix64(seed * 0x9E3779B97F4A7C15L + 1);
    random.nextLong();
  }

  /**
   * A case drawn.
   *
   * @param changed what was changed, as {@code path=value}
   */
  public record Made(String title, ReadResult.Good read, List<String> changed) {}

  /**
   * A case that differs from another in as little as turns the answer; empty where nothing does.
   */
  public Optional<Made> near(Exercise one) {
    List<Contrast> turns = new ArrayList<>();
    Contrasts contrasts = new Contrasts(advisor, Units.MM);
    for (int at = 0; at < one.assessment().feet().size(); at++) {
      if (one.expected().containsKey(one.assessment().feet().get(at).limb())) {
        turns.addAll(contrasts.of(one.read(), at, null, TURNS, done -> {}).contrasts());
      }
    }
    if (turns.isEmpty()) {
      return Optional.empty();
    }
    Contrast turn = turns.get(random.nextInt(turns.size()));
    return again(one.read(), turn.settings())
        .map(read -> new Made("Drawn near: " + one.title(), read, turn.settings()));
  }

  /**
   * A case about a limit of a rule: what its case leaves open comes from a teaching case of such a
   * foot. Empty where none fits.
   */
  public Optional<Made> about(RuleCase rule, List<Exercise> library) throws IOException {
    List<RuleCase.Bracket> brackets =
        rule.limits().values().stream().flatMap(List::stream).toList();
    String[] changes = {};
    if (brackets.isEmpty()) {
      changes = random.nextBoolean() ? changes : new String[] {rule.nearMiss()};
    } else {
      RuleCase.Bracket bracket = brackets.get(random.nextInt(brackets.size()));
      changes = bracket.changes(bracket.values().get(random.nextInt(3)));
    }
    for (int tries = 0; tries < TRIES; tries++) {
      Exercise under = library.get(random.nextInt(library.size()));
      try {
        Optional<ReadResult.Good> read = filled(rule.with(changes), rule.foot(), under);
        if (read.isPresent()) {
          String title = "Drawn about a limit of " + rule.rule();
          return Optional.of(new Made(title, read.get(), List.of(changes)));
        }
      } catch (RuleCase.Unusable unusable) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The foot of a rule's case, with what it leaves open taken from a like foot. */
  private static Optional<ReadResult.Good> filled(Assessment own, int foot, Exercise under) {
    Foot ours = own.feet().get(foot);
    Assessment other = under.assessment();
    Optional<Foot> like =
        other.feet().stream()
            .filter(one -> one.limb().fore() == ours.limb().fore())
            .min(Comparator.comparing(one -> one.limb() == ours.limb() ? 0 : 1));
    boolean foal = own.horse().ageDays() != null;
    if (like.isEmpty() || foal != (other.horse().ageDays() != null)) {
      return Optional.empty();
    }
    Assessment filled = own;
    int at = other.feet().indexOf(like.get());
    for (FieldValue field : Fields.values(other).toList()) {
      String path = target(field, at, foot);
      boolean taken = path != null && field.value() != null && !ofAPiece(path, ours, foot);
      if (taken && AssessmentEdit.of(path).value(filled) == null) {
        filled = AssessmentEdit.of(path).with(filled, field.value());
      }
    }
    return parsed(filled);
  }

  /** Where a field of the other case goes; null where it stays behind. */
  private static String target(FieldValue field, int from, int to) {
    String path = field.path();
    if (path.startsWith("horse.age") || path.endsWith(".limb")) {
      return null;
    }
    if (!path.startsWith("feet[")) {
      return path.contains("[") || path.equals("format") ? null : path;
    }
    String prefix = "feet[" + from + "].";
    String own = path.startsWith(prefix) ? path.substring(prefix.length()) : null;
    return own == null || own.contains("[") ? null : "feet[" + to + "]." + own;
  }

  private static boolean ofAPiece(String path, Foot ours, int foot) {
    String prefix = "feet[" + foot + "].";
    boolean piece = path.startsWith(prefix) && OF_A_PIECE.contains(path.substring(prefix.length()));
    return piece && (ours.wall() != null || ours.measures().bearingLength() != null);
  }

  private static Optional<ReadResult.Good> again(ReadResult.Good read, List<String> settings) {
    List<Setting> set = settings.stream().map(Setting::parse).toList();
    return AssessmentReader.again(read, set) instanceof ReadResult.Good good
        ? Optional.of(good)
        : Optional.empty();
  }

  /** What is written can be read again, or it is no case. */
  private static Optional<ReadResult.Good> parsed(Assessment assessment) {
    byte[] bytes = KnownYaml.of(assessment, Units.MM, 0).getBytes(StandardCharsets.UTF_8);
    return AssessmentReader.read(bytes, "drawn", List.of()) instanceof ReadResult.Good good
        ? Optional.of(good)
        : Optional.empty();
  }

  /** A name for the horse. */
  public String name() {
    return NAMES.get(random.nextInt(NAMES.size()));
  }
}
