package hornbook.study.exercise;

import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Urgency;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Every word that cases and answers may hold, as one rule base has them. */
public record Vocabulary(
    List<String> findings,
    List<String> referrals,
    List<String> techniques,
    List<String> supports,
    List<String> cautions,
    List<String> rules,
    List<String> topics,
    List<String> sources) {
  /** Stands for nothing at all: no call for the vet, no technique today. */
  public static final String NONE = "none";

  /** How soon the vet is called, the latest first. */
  public static final List<String> URGENCIES =
      Stream.concat(
              Stream.of(NONE),
              Arrays.stream(Urgency.values())
                  .sorted((one, other) -> other.compareTo(one))
                  .map(Urgency::word))
          .toList();

  public static Vocabulary of(Rulebook book) {
    return new Vocabulary(
        List.copyOf(book.findings().keySet()),
        ids(book, RuleConclusion.Refers.class),
        book.techniques().stream().map(NamedOption::id).toList(),
        book.supports().stream().map(NamedOption::id).toList(),
        ids(book, RuleConclusion.Cautions.class),
        List.copyOf(book.rules().keySet()),
        book.topics().stream().map(Topic::id).toList(),
        List.copyOf(book.sources().keySet()));
  }

  private static List<String> ids(Rulebook book, Class<? extends RuleConclusion> kind) {
    return book.rules().values().stream()
        .map(RuleEntry::outcome)
        .filter(kind::isInstance)
        .map(one -> one instanceof RuleConclusion.Refers refers ? refers.id() : caution(one))
        .distinct()
        .sorted()
        .toList();
  }

  private static String caution(RuleConclusion outcome) {
    return ((RuleConclusion.Cautions) outcome).id();
  }

  /** The techniques, and {@code none} for nothing today. */
  public List<String> techniquesOrNone() {
    return Stream.concat(Stream.of(NONE), techniques.stream()).toList();
  }
}
