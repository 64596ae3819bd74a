package hornbook.plan.figure;

/** A measure and what is added to it, its formula growing term by term. */
public final class RunningSum {
  private final Figure before;
  private final FormulaParts parts;
  private final StringBuilder formula = new StringBuilder("{before}");

  public RunningSum(Figure before) {
    this.before = before;
    this.parts = FormulaParts.of("before", before);
  }

  /** One term more, and the part it names. */
  public RunningSum and(String term, String name, Figure part) {
    formula.append(term);
    return part(name, part);
  }

  /** A part that a term names besides. */
  public RunningSum part(String name, Figure part) {
    parts.and(name, part);
    return this;
  }

  /** The figure; the measure itself where nothing was added. */
  public Figure figure(String label, double value) {
    return parts.all().size() == 1
        ? before
        : Figure.reckoned(label, value, before.unit(), formula.toString(), parts);
  }
}
