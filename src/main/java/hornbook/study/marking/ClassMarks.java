package hornbook.study.marking;

import hornbook.study.critique.CaseKey;
import java.util.List;

/** The marks of a class on one case, in the order of the answers. */
public record ClassMarks(CaseKey key, MarkingScheme scheme, List<Row> rows, Kappa agreement) {
  /**
   * One answer.
   *
   * @param by name or number of the learner
   * @param marks null where the answer cannot be read
   * @param error what is wrong with it, one line for each fault; else empty
   */
  public record Row(String by, String file, AnswerMarks marks, List<String> error) {}

  /** The answers that could be marked. */
  public List<AnswerMarks> marked() {
    return rows.stream().filter(row -> row.marks() != null).map(Row::marks).toList();
  }

  /** All marks there are. */
  public double of() {
    return scheme.ofOneFoot() * key.feet().size();
  }

  /** The same with how far another marker agrees. */
  public ClassMarks with(Kappa kappa) {
    return new ClassMarks(key, scheme, rows, kappa);
  }
}
