package hornbook.study.review;

import hornbook.rulebook.fact.Limit;
import java.util.List;

/**
 * A limit as it is asked about.
 *
 * @param rules what the rules that hold to it say, by their titles
 */
public record ReviewRow(Limit limit, List<String> rules) {}
