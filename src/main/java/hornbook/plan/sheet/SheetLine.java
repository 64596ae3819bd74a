package hornbook.plan.sheet;

import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.fact.Basis;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A sentence of the sheet: the instruction and what fills its holes. */
public record SheetLine(Instruction instruction, Map<String, Placeholder> holes) {

  /** The weakest ground among the instruction and its numbers. */
  public Basis basis() {
    return Figure.weakest(instruction.basis(), figures());
  }

  public Set<String> sources() {
    Set<String> sources = new LinkedHashSet<>(instruction.sources());
    figures().forEach(figure -> sources.addAll(figure.sources()));
    return sources;
  }

  /** The numbers it names. */
  public List<Figure> figures() {
    return holes.values().stream()
        .filter(Figure.class::isInstance)
        .map(Figure.class::cast)
        .toList();
  }
}
