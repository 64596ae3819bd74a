package hornbook.rulebook.fact;

/** A fact a rule can cite: it stands behind a conclusion, and explanations name it. */
public sealed interface CitedFact permits Seen, Reading, RowFact, Finding, Limit {}
