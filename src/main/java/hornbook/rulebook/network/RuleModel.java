package hornbook.rulebook.network;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Condition.Type;
import org.drools.model.Consequence;
import org.drools.model.Constraint;
import org.drools.model.DSL;
import org.drools.model.Global;
import org.drools.model.Index;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.consequences.ConsequenceImpl;
import org.drools.model.constraints.MultipleConstraints;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;
import org.drools.model.impl.RuleImpl;
import org.drools.model.index.AlphaIndexImpl;
import org.drools.model.patterns.CompositePatterns;
import org.drools.model.patterns.PatternImpl;

/**
 * The engine's own model of rules, made of their entries in the catalogue. Limits stand in it as
 * constants: it holds for the limbs and the age of which they were taken. Tests that say the same
 * have the same key, so that the engine asks a fact once for all rules.
 */
final class RuleModel {
  /** The list that what was concluded goes to, by its name in a session. */
  static final String CONCLUDED = "concluded";

  private static final String PACKAGE = "hornbook.rules";

  @SuppressWarnings("rawtypes")
  private static final Global<List> LIST = DSL.globalOf(List.class, PACKAGE, CONCLUDED);

  private final RuleEntry rule;
  private final Map<String, Limit> limits;
  private final Map<String, Object> cited = new HashMap<>();
  private final List<org.drools.model.Condition> patterns = new ArrayList<>();
  private final List<Variable<?>> variables = new ArrayList<>();

  private RuleModel(RuleEntry rule, Map<String, Limit> limits) {
    this.rule = rule;
    this.limits = limits;
  }

  /**
   * The model of these rules under these limits; a rule that binds a limit not held has no part.
   */
  static Model of(Iterable<RuleEntry> rules, Map<String, Limit> limits) {
    ModelImpl model = new ModelImpl(PACKAGE);
    model.addGlobal(LIST);
    for (RuleEntry rule : rules) {
      if (rule.limits().allMatch(limits::containsKey)) {
        model.addRule(new RuleModel(rule, limits).built());
      }
    }
    return model;
  }

  private Rule built() {
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfLimit limit) {
        cited.put(limit.variable(), limits.get(limit.id()));
      } else {
        cited.put(condition.variable(), patterns.size());
        patterns.add(pattern(condition));
      }
    }
    boolean finds = rule.outcome() instanceof RuleConclusion.Finds;
    variables.add(LIST);
    Conclude conclude =
        new Conclude(
            rule.id(),
            rule.outcome(),
            rule.outcome().cites().stream().map(cited::get).map(Object.class::cast).toList());
    Consequence consequence =
        new ConsequenceImpl(conclude, variables.toArray(Variable[]::new), finds, false, "java");
    CompositePatterns view =
        new CompositePatterns(
            Type.AND, patterns, Map.of(RuleImpl.DEFAULT_CONSEQUENCE_NAME, consequence));
    return new RuleImpl(PACKAGE, rule.id(), null, view, Map.of(), Map.of());
  }

  private PatternImpl<?> pattern(Condition condition) {
    if (condition instanceof Condition.OfReading reading) {
      Limit limit = limits.get(rule.limitBoundTo(reading.limit()));
      String key = (reading.satisfies() ? "satisfies " : "misses ") + limit.id();
      Predicate1<CitedFact> test = new LimitTest(limit, reading.satisfies());
      return pattern(Reading.class, condition, reading.what(), Map.of(key, test));
    }
    if (condition instanceof Condition.OfSeen seen) {
      Map<String, WordTest> word = Map.of("word", seen.word());
      return pattern(Seen.class, condition, seen.what(), tests(word));
    }
    if (condition instanceof Condition.OfCrack crack) {
      return pattern(Crack.class, condition, null, tests(crack.words()));
    }
    if (condition instanceof Condition.OfStretch stretch) {
      return pattern(Stretch.class, condition, null, tests(stretch.words()));
    }
    Condition.OfFinding finding = (Condition.OfFinding) condition;
    return pattern(Finding.class, condition, finding.what(), Map.of());
  }

  private static Map<String, Predicate1<CitedFact>> tests(Map<String, WordTest> words) {
    Map<String, Predicate1<CitedFact>> tests = new java.util.TreeMap<>();
    words.forEach(
        (field, test) ->
            tests.put(
                field + (test.oneOf() ? " in " : " not in ") + test.words(),
                new WordsTest(field, test)));
    return tests;
  }

  /** A pattern on one kind of fact; the name, where facts have one, is found by hashing. */
  @SuppressWarnings("unchecked")
  private <T extends CitedFact> PatternImpl<T> pattern(
      Class<T> kind, Condition condition, String name, Map<String, Predicate1<CitedFact>> tests) {
    Variable<T> variable = DSL.declarationOf(kind, "$" + condition.variable());
    variables.add(variable);
    List<Constraint> constraints = new ArrayList<>(tests.size() + 1);
    Variable<CitedFact> fact = (Variable<CitedFact>) variable;
    if (name != null) {
      SingleConstraint1<CitedFact> named =
          new SingleConstraint1<>("is " + name, fact, new IsNamed(name));
      named.setIndex(
          new AlphaIndexImpl<>(String.class, Index.ConstraintType.EQUAL, 0, FactName.OF, name));
      constraints.add(named);
    }
    tests.forEach((key, test) -> constraints.add(new SingleConstraint1<>(key, fact, test)));
    return new PatternImpl<>(variable, new MultipleConstraints(constraints));
  }
}
