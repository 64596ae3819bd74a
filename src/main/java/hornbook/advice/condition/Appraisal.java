package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Says how every rule stands on a foot, fired or silent: which conditions hold, which fail and
 * which are unknown. The engine decides what fires; this only explains, and a test holds the two
 * together.
 */
public final class Appraisal {
  private final Rulebook book;
  private final FactSheet sheet;
  private final Map<String, RuleState> states = new LinkedHashMap<>();
  private final Map<String, List<RuleEntry>> makers = new LinkedHashMap<>();

  private Appraisal(Rulebook book, FactSheet sheet) {
    this.book = book;
    this.sheet = sheet;
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof RuleConclusion.Finds finds) {
        makers.computeIfAbsent(finds.finding(), key -> new ArrayList<>()).add(rule);
      }
    }
  }

  /** The state of every rule on this foot, by id. */
  public static Map<String, RuleState> of(Rulebook book, FactSheet sheet) {
    Appraisal appraisal = new Appraisal(book, sheet);
    for (RuleEntry rule : book.rules().values()) {
      appraisal.state(rule);
    }
    return appraisal.states;
  }

  /** What looks at the conditions of a foot one by one. */
  static Appraisal condition(Rulebook book, FactSheet sheet) {
    return new Appraisal(book, sheet);
  }

  private RuleState state(RuleEntry rule) {
    RuleState known = states.get(rule.id());
    if (known != null) {
      return known;
    }
    List<ConditionState> conditions = new ArrayList<>(rule.conditions().size());
    for (Condition condition : rule.conditions()) {
      conditions.add(state(rule, condition));
    }
    RuleState state = new RuleState(rule, conditions);
    states.put(rule.id(), state);
    return state;
  }

  ConditionState state(RuleEntry rule, Condition condition) {
    if (condition instanceof Condition.OfLimit limit) {
      Limit held = sheet.limits().get(limit.id());
      return settled(condition, held != null, held == null ? List.of() : List.of(held), held);
    }
    if (condition instanceof Condition.OfReading reading) {
      return reading(rule, reading);
    }
    if (condition instanceof Condition.OfSeen seen) {
      return seen(seen);
    }
    if (condition instanceof Condition.OfCrack crack) {
      return among(
          condition, crack.words(), sheet.cracks(), Appraisal::words, Crack::field, "cracks");
    }
    if (condition instanceof Condition.OfStretch stretch) {
      return among(
          condition, stretch.words(), sheet.wall(), Appraisal::words, Stretch::field, "wall");
    }
    return finding((Condition.OfFinding) condition);
  }

  private ConditionState reading(RuleEntry rule, Condition.OfReading condition) {
    Limit limit = sheet.limits().get(rule.limitBoundTo(condition.limit()));
    Reading reading = sheet.readings().get(condition.what());
    if (limit == null) {
      return settled(condition, false, reading == null ? List.of() : List.of(reading), null);
    }
    if (reading == null) {
      return unknown(condition, List.of(), limit, unseen(condition.what()));
    }
    boolean satisfies = reading.satisfies(limit);
    boolean misses = reading.misses(limit);
    if (!satisfies && !misses) {
      return unknown(condition, List.of(reading), limit, unseen(condition.what()));
    }
    return settled(condition, condition.satisfies() ? satisfies : misses, List.of(reading), limit);
  }

  private ConditionState seen(Condition.OfSeen condition) {
    List<Seen> words = sheet.seen().get(condition.what());
    if (words == null) {
      return unknown(condition, List.of(), null, unseen(condition.what()));
    }
    List<Seen> passing =
        words.stream().filter(word -> condition.word().passes(word.word())).toList();
    return settled(condition, !passing.isEmpty(), passing.isEmpty() ? words : passing, null);
  }

  private <T extends CitedFact> ConditionState among(
      Condition condition,
      Map<String, WordTest> tests,
      List<T> all,
      Function<T, Map<String, String>> words,
      Function<T, String> field,
      String what) {
    if (all == null) {
      return unknown(condition, List.of(), null, unseen(what));
    }
    List<T> passing = new ArrayList<>();
    Set<String> unseen = new LinkedHashSet<>();
    for (T one : all) {
      Truth truth = Truth.TRUE;
      Map<String, String> own = words.apply(one);
      Set<String> missing = new LinkedHashSet<>();
      for (Map.Entry<String, WordTest> test : tests.entrySet()) {
        String word = own.get(test.getKey());
        if (word == null) {
          missing.add(field.apply(one) + "." + test.getKey());
          truth = truth.and(Truth.UNKNOWN);
        } else {
          truth = truth.and(Truth.of(test.getValue().passes(word)));
        }
      }
      if (truth == Truth.TRUE) {
        passing.add(one);
      } else if (truth == Truth.UNKNOWN) {
        unseen.addAll(missing);
      }
    }
    if (passing.isEmpty() && !unseen.isEmpty()) {
      return unknown(condition, all, null, List.copyOf(unseen));
    }
    return settled(condition, !passing.isEmpty(), passing.isEmpty() ? all : passing, null);
  }

  private ConditionState finding(Condition.OfFinding condition) {
    List<RuleState> states = new ArrayList<>();
    for (RuleEntry maker : makers.getOrDefault(condition.what(), List.of())) {
      states.add(state(maker));
    }
    return finding(condition, states);
  }

  /** A finding, as the rules stand that make it; those that fail may be left out. */
  static ConditionState finding(Condition.OfFinding condition, List<RuleState> makers) {
    Truth truth = Truth.FALSE;
    Set<String> unseen = new LinkedHashSet<>();
    for (RuleState state : makers) {
      truth = truth.or(state.truth());
      state.unseen().forEach(unseen::add);
    }
    return switch (truth) {
      case UNKNOWN -> unknown(condition, List.of(), null, List.copyOf(unseen));
      case TRUE -> settled(condition, true, List.of(Finding.of(condition.what())), null);
      case FALSE -> settled(condition, false, List.of(), null);
    };
  }

  private Collection<String> unseen(String what) {
    return sheet.unknown().getOrDefault(what, List.of());
  }

  static Map<String, String> words(Crack crack) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("place", crack.place());
    words.put("side", crack.side());
    words.put("starts", crack.starts());
    words.put("depth", crack.depth());
    words.put("bleeds", crack.bleeds());
    words.put("moves", crack.moves());
    return words;
  }

  static Map<String, String> words(Stretch stretch) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("side", stretch.side());
    words.put("state", stretch.state());
    words.put("moist", stretch.moist());
    words.put("damp", stretch.damp());
    return words;
  }

  private static ConditionState settled(
      Condition condition, boolean holds, List<? extends CitedFact> cited, Limit limit) {
    return new ConditionState(condition, Truth.of(holds), cited, limit, List.of());
  }

  private static ConditionState unknown(
      Condition condition,
      List<? extends CitedFact> cited,
      Limit limit,
      Collection<String> unseen) {
    return new ConditionState(condition, Truth.UNKNOWN, cited, limit, List.copyOf(unseen));
  }
}
