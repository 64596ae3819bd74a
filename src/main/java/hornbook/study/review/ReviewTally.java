package hornbook.study.review;

import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all who answered say of one limit. Whoever agrees proposes the value that stands; the median
 * is of all values proposed, of an even number the mean of the middle two.
 *
 * @param people how many answered
 * @param proposed the values, the least first
 * @param comments with the names of those who made them
 */
public record ReviewTally(
    Limit limit,
    int people,
    int agree,
    int disagree,
    List<Double> proposed,
    List<String> comments) {

  /** One for every limit that anybody answered, in the order of the questionnaire. */
  public static List<ReviewTally> of(List<ReviewRow> rows, List<ReviewAnswer> answers) {
    Map<Limit, List<ReviewAnswer>> byLimit = new LinkedHashMap<>();
    rows.forEach(row -> byLimit.put(row.limit(), new ArrayList<>()));
    answers.forEach(answer -> byLimit.get(answer.limit()).add(answer));
    List<ReviewTally> tallies = new ArrayList<>();
    byLimit.forEach(
        (limit, given) -> {
          if (!given.isEmpty()) {
            tallies.add(of(limit, given));
          }
        });
    return List.copyOf(tallies);
  }

  private static ReviewTally of(Limit limit, List<ReviewAnswer> given) {
    List<Double> proposed = new ArrayList<>();
    List<String> comments = new ArrayList<>();
    int agree = 0;
    int disagree = 0;
    for (ReviewAnswer answer : given) {
      boolean other = answer.value() != null && answer.value() != limit.value();
      boolean disagrees = other || Boolean.FALSE.equals(answer.agrees());
      boolean agrees = !disagrees && (answer.value() != null || answer.agrees() != null);
      agree += agrees ? 1 : 0;
      disagree += disagrees ? 1 : 0;
      if (agrees) {
        proposed.add(limit.value());
      } else if (answer.value() != null) {
        proposed.add(answer.value());
      }
      if (!answer.comment().isEmpty()) {
        comments.add(answer.name() + ": " + answer.comment());
      }
    }
    proposed.sort(null);
    return new ReviewTally(
        limit, given.size(), agree, disagree, List.copyOf(proposed), List.copyOf(comments));
  }

  /** The median of the values proposed; null where none was. */
  public Double median() {
    int size = proposed.size();
    return size == 0
        ? null
        : Double.valueOf((proposed.get((size - 1) / 2) + proposed.get(size / 2)) / 2);
  }
}
