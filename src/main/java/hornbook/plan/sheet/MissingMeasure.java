package hornbook.plan.sheet;

import java.util.List;

/**
 * A field that was not measured.
 *
 * @param field its path in the assessment; or {@code --dip} and the like for what is asked on the
 *     command line
 * @param wantedFor the numbers that need it, in trade words
 */
public record MissingMeasure(String field, List<String> wantedFor) {}
