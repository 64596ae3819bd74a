package hornbook.advice.condition;

/**
 * Every answer a foot gives to what the rules ask. Feet of one rule base that are alike in this are
 * advised alike.
 *
 * @param sides one sign for each number compared with a limit
 * @param words every word seen
 */
public record Signature(String sides, String words) {}
