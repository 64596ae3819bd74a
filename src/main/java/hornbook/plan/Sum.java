package hornbook.plan;

/** A measure and what is added to it, its formula growing term by term. */
final class Sum {
  private final Figure before;
  private final Parts parts;
  private final StringBuilder formula = new StringBuilder("{before}");

  Sum(Figure before) {
    this.before = before;
    this.parts = Parts.of("before", before);
  }

  /** One term more, and the part it names. */
  Sum and(String term, String name, Figure part) {
    formula.append(term);
    return part(name, part);
  }

  /** A part that a term names besides. */
  Sum part(String name, Figure part) {
    parts.and(name, part);
    return this;
  }

  /** The figure; the measure itself where nothing was added. */
  Figure figure(String label, double value) {
    return parts.all().size() == 1
        ? before
        : Figure.reckoned(label, value, before.unit(), formula.toString(), parts);
  }
}
