package hornbook.study.exercise;

import java.util.List;

/**
 * What a case expects of a careful farrier on one foot. A null list was left to the rule base: the
 * model answer then takes all it gives.
 *
 * @param firstChoice a technique, or {@code none}
 * @param urgency how soon the vet, or {@code none}
 * @param ruledOut techniques and supports that are ruled out here and that a learner should name
 * @param supports supports that may be used and that a learner should name
 * @param findings what has to be found
 * @param because rules that carry the answer
 * @param cautions warnings that belong to it
 * @param ask fields that were not looked at and should have been
 */
public record Expected(
    String firstChoice,
    String urgency,
    List<String> ruledOut,
    List<String> supports,
    List<String> findings,
    List<String> because,
    List<String> cautions,
    List<String> ask) {}
