package hornbook.advice;

import hornbook.rulebook.fact.CitedFact;
import java.util.Map;

/**
 * A sentence with holes, and the facts that fill them; numbers are put into units when it is shown.
 */
public record Statement(String template, Map<String, CitedFact> holes) {}
