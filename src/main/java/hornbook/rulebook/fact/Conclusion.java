package hornbook.rulebook.fact;

import java.util.List;

/** What a rule inserts: one finding, referral, reason or caution, with the facts it rests on. */
public sealed interface Conclusion permits Finding, Referral, Reason, Caution {
  /** The facts cited, in the order the rule names them. */
  List<CitedFact> because();
}
