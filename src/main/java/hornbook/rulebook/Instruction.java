package hornbook.rulebook;

import hornbook.rulebook.fact.Basis;
import java.util.List;

/**
 * A sentence of the job sheet, as data: what it says, with holes for the numbers, and its ground.
 *
 * @param id section and name, as {@code dress.sole}
 */
public record Instruction(String id, String says, List<String> sources, Basis basis) {}
