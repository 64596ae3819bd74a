package hornbook.study;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.engine.OutcomeCache;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.CrossChecks;
import hornbook.assessment.read.ReadResult;
import hornbook.rules.Shipped;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrasts;
import hornbook.study.contrast.FootContrasts;
import hornbook.study.contrast.Observation;
import hornbook.study.contrast.OutcomeChange;
import hornbook.study.contrast.SingleChange;
import hornbook.study.measure.Graduation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrasts against trying everything there is, by the engine. */
class ContrastsAgainstAllTest {
  private static final int MARKS = 12;
  private static final double SAME = 1e-9;
  private static final OutcomeCache ENGINE = new OutcomeCache(Shipped.ADVISOR);

  private static FootContrasts contrasted(ReadResult.Good read) {
    Contrasts contrasts = new Contrasts(Shipped.ADVISOR, Units.MM);
    return contrasts.of(read, 0, null, Contrasts.MOST, done -> {});
  }

  private static List<OutcomeChange> turns(FootContrasts one, Assessment changed) {
    return OutcomeChange.between(Outcome.of(one.foot()), ENGINE.of(changed, 0));
  }

  /** The nearest contrast that gives each turn. */
  private static Map<OutcomeChange, Double> told(FootContrasts one) {
    Map<OutcomeChange, Double> told = new HashMap<>();
    for (Contrast contrast : one.contrasts()) {
      contrast.gives().forEach(turn -> told.merge(turn, contrast.errors(), Math::min));
    }
    return told;
  }

  @ParameterizedTest
  @ValueSource(strings = {"foal-trim", "showjumper-torn-side"})
  void no_mark_near_what_was_noted_gives_a_turn_nearer_than_is_told(String name) {
    ReadResult.Good read = Given.read(Shipped.EXERCISES.resolve(name + ".yaml"));
    FootContrasts one = contrasted(read);
    Map<OutcomeChange, Double> told = told(one);
    int met = 0;
    for (Observation what : one.looked()) {
      if (what.field().kind() instanceof Amount amount) {
        Graduation marks = what.tool().marks(amount.dimension(), Units.MM);
        long first = marks.beyond((Double) what.noted(), true) - MARKS;
        for (long mark = first; mark < first + 2 * MARKS; mark++) {
          Assessment changed = what.with(read.assessment(), marks.kept(mark));
          boolean possible = marks.kept(mark) >= amount.leastKept() && CrossChecks.hold(changed);
          for (OutcomeChange turn : possible ? turns(one, changed) : List.<OutcomeChange>of()) {
            assertThat(told.get(turn))
                .as(what.path() + " at " + marks.kept(mark) + ": " + turn)
                .isNotNull()
                .isLessThanOrEqualTo(what.errors(marks.kept(mark)) + SAME);
            met++;
          }
        }
      }
    }
    assertThat(met).isPositive();
  }

  /** All pairs of signs on a foot of which little was looked at. */
  @Test
  void no_two_signs_give_a_turn_nearer_than_is_told() {
    ReadResult.Good read =
        Given.written(
            """
            horse: {ageYears: 8, unwillingToMove: false, shiftsWeight: false}
            feet:
              - limb: left-fore
                lameness: 2
                onset: gradual
                signs:
                  digitalPulse: normal
                  hoofHeat: false
                  soleBulge: false
                  coronetGroove: false
                  swelling: none
                  suddenEase: false
                  frogState: healthy
            """);
    FootContrasts one = contrasted(read);
    Map<OutcomeChange, Double> told = told(one);
    List<SingleChange> all = new ArrayList<>();
    for (Observation what : one.looked()) {
      others(what)
          .forEach(value -> all.add(new SingleChange(what, value, what.errors(value), null)));
    }
    int pairs = 0;
    for (SingleChange first : all) {
      for (SingleChange second : all) {
        if (first.what() != second.what()) {
          List<OutcomeChange> fewer = new ArrayList<>(turns(one, first.on(read.assessment())));
          fewer.addAll(turns(one, second.on(read.assessment())));
          for (OutcomeChange turn : turns(one, second.on(first.on(read.assessment())))) {
            if (turn.newBeside(fewer)) {
              pairs++;
              assertThat(told.get(turn))
                  .as(first.value() + " and " + second.value() + ": " + turn)
                  .isNotNull()
                  .isLessThanOrEqualTo(first.errors() + second.errors() + SAME);
            }
          }
        }
      }
    }
    assertThat(pairs).isPositive();
    assertThat(one.contrasts()).anyMatch(contrast -> contrast.changes().size() == 2);
  }

  private static List<Object> others(Observation what) {
    List<Object> others = new ArrayList<>();
    if (what.field().kind() instanceof OneWord one) {
      others.addAll(one.options());
      others.remove(what.noted());
    } else if (what.field().kind() instanceof Flag) {
      others.add(!(Boolean) what.noted());
    }
    return others;
  }
}
