package hornbook.study.explain;

import hornbook.advice.condition.Appraisal;
import hornbook.advice.condition.ConditionState;
import hornbook.advice.condition.ConditionTable;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldValue;
import hornbook.rulebook.Condition;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.study.measure.RecordedFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Follows the rules on one foot down to the fields of the file. */
final class RuleChains {
  private final Rulebook book;
  private final FactSheet sheet;
  private final RecordedFields fields;
  private final Map<String, RuleState> states;
  private final Map<String, RuleChain> known = new HashMap<>();
  private final Map<String, List<RuleEntry>> makers;

  RuleChains(Rulebook book, Assessment assessment, FactSheet sheet) {
    this.book = book;
    this.sheet = sheet;
    this.fields = new RecordedFields(assessment);
    this.states = Appraisal.of(book, sheet);
    this.makers = ConditionTable.makers(book.rules().values());
  }

  RuleChain of(String rule) {
    RuleChain chain = known.get(rule);
    if (chain == null) {
      chain = followed(states.get(rule));
      known.put(rule, chain);
    }
    return chain;
  }

  private RuleChain followed(RuleState state) {
    List<ChainLink> links = new ArrayList<>();
    for (ConditionState condition : state.conditions()) {
      boolean limit = condition.condition() instanceof Condition.OfLimit;
      if (!limit || condition.truth() != Truth.TRUE) {
        links.add(link(condition));
      }
    }
    return new RuleChain(state.rule(), state.truth(), List.copyOf(links));
  }

  /** The chains of these rules: those that fired first, then the nearest to firing. */
  List<RuleChain> of(Predicate<RuleEntry> which) {
    return of(book.rules().values().stream().filter(which));
  }

  private List<RuleChain> of(Stream<RuleEntry> rules) {
    return rules
        .map(rule -> of(rule.id()))
        .sorted(
            Comparator.comparing((RuleChain chain) -> !chain.fired())
                .thenComparing(RuleChain::failing)
                .thenComparing(RuleChain::missing))
        .toList();
  }

  private ChainLink link(ConditionState state) {
    if (state.condition() instanceof Condition.OfFinding finding) {
      return new ChainLink(
          state,
          null,
          List.of(),
          null,
          of(makers.getOrDefault(finding.what(), List.of()).stream()));
    }
    Limit asked = state.limit();
    if (state.condition() instanceof Condition.OfLimit limit) {
      asked = book.limits().stream().filter(one -> one.id().equals(limit.id())).findFirst().get();
    }
    return new ChainLink(state, asked, noted(state), off(state), List.of());
  }

  /** A reading that is known needs nothing more: fields it could have come from are left out. */
  private List<FieldValue> noted(ConditionState state) {
    List<FieldValue> noted = fields.of(paths(state));
    List<FieldValue> known = noted.stream().filter(field -> field.value() != null).toList();
    return state.truth() == Truth.UNKNOWN || known.isEmpty() ? noted : known;
  }

  static boolean makes(RuleEntry rule, String finding) {
    return rule.outcome() instanceof RuleConclusion.Finds finds && finds.finding().equals(finding);
  }

  private Set<String> paths(ConditionState state) {
    Set<String> paths = new LinkedHashSet<>();
    for (CitedFact fact : state.cited()) {
      if (fact instanceof Reading reading) {
        paths.addAll(reading.fields());
      } else if (fact instanceof Seen seen) {
        paths.add(seen.field());
      } else if (fact instanceof Crack crack) {
        words(state).forEach(word -> paths.add(crack.field() + "." + word));
      } else if (fact instanceof Stretch stretch) {
        words(state).forEach(word -> paths.add(stretch.field() + "." + word));
      }
    }
    paths.addAll(state.unseen());
    if (paths.isEmpty()) {
      paths.addAll(nothingThere(state.condition()));
    }
    return paths;
  }

  private static Set<String> words(ConditionState state) {
    if (state.condition() instanceof Condition.OfCrack crack) {
      return crack.words().keySet();
    }
    return ((Condition.OfStretch) state.condition()).words().keySet();
  }

  /** Where a crack or stretch would stand, or a word nobody asks for on such a foot. */
  private List<String> nothingThere(Condition condition) {
    String foot = sheet.seen().get("limbs").get(0).field().replace(".limb", "");
    if (condition instanceof Condition.OfCrack) {
      return List.of(foot + ".cracks");
    }
    if (condition instanceof Condition.OfStretch) {
      return List.of(foot + ".wall");
    }
    if (condition instanceof Condition.OfSeen seen) {
      return fields.named(seen.what(), foot);
    }
    if (condition instanceof Condition.OfReading reading) {
      ReadingKind computed = ReadingKind.of(reading.what());
      return computed == null
          ? fields.named(reading.what(), foot)
          : computed.fields().stream()
              .filter(field -> field.startsWith("foot."))
              .map(field -> foot + field.substring("foot".length()))
              .toList();
    }
    return condition instanceof Condition.OfLimit ? limitFields(foot) : List.of();
  }

  /** A limit that does not hold hangs on limb and age. */
  private List<String> limitFields(String foot) {
    List<Seen> age = sheet.seen().get("age");
    return age == null
        ? List.of(foot + ".limb", "horse.ageYears")
        : List.of(foot + ".limb", age.get(0).field());
  }

  /** How far a reading lies from the limit it is compared with. */
  private static Double off(ConditionState state) {
    if (state.limit() == null
        || state.truth() == Truth.UNKNOWN
        || state.cited().isEmpty()
        || !(state.cited().get(0) instanceof Reading reading)) {
      return null;
    }
    double limit = state.limit().value();
    double off = Math.min(Math.abs(reading.low() - limit), Math.abs(reading.high() - limit));
    return Math.rint(off * 1e6) / 1e6;
  }
}
