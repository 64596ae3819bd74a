package hornbook.rulebook;

import hornbook.rulebook.fact.Limit;
import java.util.List;
import java.util.Map;

/**
 * A rule base as data: what its rules say, need and rest on. The compiled rules are found by {@code
 * modelClass}; techniques stand in order of intervention, the least first; instructions are the
 * sentences of the job sheets.
 *
 * @param digest sha256 over the files of the rule base
 */
public record Rulebook(
    String version,
    String digest,
    String modelClass,
    List<Topic> topics,
    List<Named> techniques,
    List<Named> supports,
    Map<String, Source> sources,
    Map<String, FindingKind> findings,
    List<Limit> limits,
    Map<String, RuleEntry> rules,
    Map<String, Instruction> instructions,
    List<Term> glossary) {

  /** The same rule base with other limits. */
  public Rulebook withLimits(List<Limit> changed) {
    return new Rulebook(
        version,
        digest,
        modelClass,
        topics,
        techniques,
        supports,
        sources,
        findings,
        List.copyOf(changed),
        rules,
        instructions,
        glossary);
  }

  public Named technique(String id) {
    return named(techniques, id);
  }

  public Named support(String id) {
    return named(supports, id);
  }

  private static Named named(List<Named> all, String id) {
    for (Named one : all) {
      if (one.id().equals(id)) {
        return one;
      }
    }
    return null;
  }
}
