package hornbook.study.review;

import hornbook.rulebook.fact.Limit;

/**
 * What one person says of one limit.
 *
 * @param agrees whether the value is right; null where nothing was said
 * @param value the value proposed instead, in the limit's unit, or null
 * @param years in the trade, or null
 */
public record ReviewAnswer(
    Limit limit, Boolean agrees, Double value, String comment, String name, Integer years) {}
