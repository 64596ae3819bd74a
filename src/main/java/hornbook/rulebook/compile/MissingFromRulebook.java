package hornbook.rulebook.compile;

import hornbook.rulebook.Instruction;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.util.Map;

/** The rule base in use, one of somebody's own, has not all that is asked of it. */
public final class MissingFromRulebook extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String cure;

  /**
   * @param what the thing it is without
   * @param cure what to do about it
   */
  public MissingFromRulebook(String what, String cure) {
    super("the rule base has no " + what, null, false, false);
    this.cure = cure;
  }

  public String cure() {
    return cure;
  }

  /**
   * A sentence of the job sheets.
   *
   * @throws MissingFromRulebook when the rule base has none of this id
   */
  public static Instruction instruction(Rulebook book, String id) {
    Instruction instruction = book.instructions().get(id);
    if (instruction == null) {
      throw new MissingFromRulebook("instruction " + id, "write it into its folder plan");
    }
    return instruction;
  }

  /**
   * A limit of those that hold for a foot.
   *
   * @throws MissingFromRulebook when it is not among them
   */
  public static Limit limit(Map<String, Limit> limits, String id) {
    Limit limit = limits.get(id);
    if (limit == null) {
      throw new MissingFromRulebook(
          "limit " + id + " for such a foot", "write it, with uses: computing");
    }
    return limit;
  }
}
