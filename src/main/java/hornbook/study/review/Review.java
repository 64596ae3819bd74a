package hornbook.study.review;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;

/** The limits in the order the trade is asked about them: those with the weakest ground first. */
public final class Review {
  /** Practice and memory need people most; then what was worked out, second-hand, and published. */
  private static final List<Basis> ORDER =
      List.of(Basis.PRACTICE, Basis.MEMORY, Basis.DERIVED, Basis.QUOTED, Basis.PUBLISHED);

  private Review() {}

  public static List<ReviewRow> of(Rulebook book) {
    List<ReviewRow> rows = new ArrayList<>();
    for (Basis basis : ORDER) {
      for (Limit limit : book.limits()) {
        if (limit.basis() == basis) {
          List<String> rules =
              book.rules().values().stream()
                  .filter(rule -> rule.limits().anyMatch(limit.id()::equals))
                  .map(RuleEntry::title)
                  .toList();
          rows.add(new ReviewRow(limit, rules));
        }
      }
    }
    return List.copyOf(rows);
  }
}
