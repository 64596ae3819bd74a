package hornbook.rulebook.read;

import hornbook.rulebook.Condition;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Stretch;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.PatternDescr;

/** Reads one line of a rule's conditions in the few forms that rules are written in. */
final class ConditionReader {
  private static final Pattern WORD = Pattern.compile("(\\w+)\\s*(==|!=)\\s*\"([^\"]*)\"");
  private static final Pattern WORDS =
      Pattern.compile(
          "(\\w+)\\s+(not\\s+)?in\\s*\\(\\s*(\"[^\"]*\"(?:\\s*,\\s*\"[^\"]*\")*)\\s*\\)");
  private static final Pattern LIMIT =
      Pattern.compile("(satisfies|misses)\\s*\\(\\s*\\$(\\w+)\\s*\\)");

  /** What a condition may not say, in words for its author. */
  static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused(String says) {
      super(says);
    }
  }

  private ConditionReader() {}

  static Condition read(BaseDescr written) throws Refused {
    if (!(written instanceof PatternDescr pattern)) {
      throw new Refused("only plain conditions are allowed: no not, exists, or, eval, accumulate");
    }
    if (pattern.getSource() != null || !pattern.getBehaviors().isEmpty()) {
      throw new Refused("a condition may not draw on from, accumulate or a window");
    }
    String variable = pattern.getIdentifier();
    if (variable == null || !variable.startsWith("$")) {
      throw new Refused(
          "the condition on " + pattern.getObjectType() + " has no name: write $name : before it");
    }
    String name = variable.substring(1);
    Tests tests = new Tests(pattern);
    Condition condition =
        switch (pattern.getObjectType()) {
          case "Limit" -> new Condition.OfLimit(name, tests.only("id"));
          case "Finding" -> new Condition.OfFinding(name, tests.only("what"));
          case "Reading" -> {
            if (tests.limit == null) {
              throw new Refused(
                  "a Reading is compared with a limit: satisfies( $limit ) or misses( $limit )");
            }
            yield new Condition.OfReading(name, tests.only("what"), tests.satisfies, tests.limit);
          }
          case "Seen" -> {
            WordTest word = tests.words.remove("word");
            if (word == null) {
              throw new Refused("a Seen asks for a word: word == \"…\"");
            }
            yield new Condition.OfSeen(name, tests.only("what"), word);
          }
          case "Crack" -> new Condition.OfCrack(name, tests.among(Crack.WORDS));
          case "Stretch" -> new Condition.OfStretch(name, tests.among(Stretch.WORDS));
          default ->
              throw new Refused(
                  "rules know Limit, Reading, Seen, Crack, Stretch and Finding, not "
                      + pattern.getObjectType());
        };
    if (tests.limit != null && !(condition instanceof Condition.OfReading)) {
      throw new Refused("only a Reading can meet or miss a limit");
    }
    return condition;
  }

  /** The tests inside the brackets of one condition. */
  private static final class Tests {
    private final Map<String, WordTest> words = new LinkedHashMap<>();
    private boolean satisfies;
    private String limit;

    Tests(PatternDescr pattern) throws Refused {
      for (BaseDescr constraint : pattern.getConstraint().getDescrs()) {
        if (constraint instanceof ExprConstraintDescr expression) {
          add(expression.getExpression().trim());
        } else if (!(constraint instanceof AndDescr)) {
          throw new Refused("this test is not understood: " + constraint);
        }
      }
    }

    private void add(String test) throws Refused {
      Matcher one = WORD.matcher(test);
      Matcher several = WORDS.matcher(test);
      Matcher against = LIMIT.matcher(test);
      if (one.matches()) {
        put(one.group(1), new WordTest(one.group(2).equals("=="), List.of(one.group(3))));
      } else if (several.matches()) {
        List<String> listed =
            Pattern.compile("\"([^\"]*)\"")
                .matcher(several.group(3))
                .results()
                .map(m -> m.group(1))
                .toList();
        put(several.group(1), new WordTest(several.group(2) == null, listed));
      } else if (against.matches()) {
        if (limit != null) {
          throw new Refused("one condition is compared with one limit");
        }
        satisfies = against.group(1).equals("satisfies");
        limit = against.group(2);
      } else if (test.matches(".*\\d.*")) {
        throw new Refused("a number stands in the condition: " + test + "; put it into a limit");
      } else {
        throw new Refused("this test is not of the allowed forms: " + test);
      }
    }

    private void put(String field, WordTest test) throws Refused {
      if (words.put(field, test) != null) {
        throw new Refused(field + " is tested twice in one condition");
      }
    }

    /** The word of the one test that is left, which has to be on this field. */
    String only(String field) throws Refused {
      WordTest test = words.remove(field);
      if (test == null || !test.oneOf() || test.words().size() != 1) {
        throw new Refused("the condition has to say " + field + " == \"…\"");
      }
      among(List.of());
      return test.words().get(0);
    }

    Map<String, WordTest> among(List<String> allowed) throws Refused {
      for (String field : words.keySet()) {
        if (!allowed.contains(field)) {
          throw new Refused(
              "there is no "
                  + field
                  + " to test here"
                  + (allowed.isEmpty() ? "" : "; there are " + allowed.stream().sorted().toList()));
        }
        if (!words.get(field).oneOf()) {
          throw new Refused(
              "ask for the words "
                  + field
                  + " has to be: what was not looked at would pass as another word");
        }
      }
      return java.util.Collections.unmodifiableMap(new LinkedHashMap<>(words));
    }
  }
}
