package hornbook.study.explain;

import hornbook.advice.FootAdvice;
import java.util.List;

/**
 * Why something is so on a foot, or why not.
 *
 * @param whyNot whether it was asked why not
 * @param deciding the rules that settle it, the weightiest first; they fired, or stayed silent
 * @param further the other rules that fired and bear on it
 * @param silent the other rules that could bear on it and stayed silent
 */
public record Explanation(
    Subject subject,
    boolean whyNot,
    FootAdvice foot,
    Answer answer,
    List<RuleChain> deciding,
    List<RuleChain> further,
    List<RuleChain> silent) {}
