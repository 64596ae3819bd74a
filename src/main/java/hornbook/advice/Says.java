package hornbook.advice;

import hornbook.rulebook.fact.Cited;
import java.util.Map;

/**
 * A sentence with holes, and the facts that fill them; numbers are put into units when it is shown.
 */
public record Says(String template, Map<String, Cited> holes) {}
