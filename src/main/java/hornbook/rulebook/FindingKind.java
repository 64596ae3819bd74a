package hornbook.rulebook;

import java.util.List;

/**
 * A finding rules can make; a defect has to be answered by the technique that is chosen.
 *
 * @param excludes findings that cannot be made on the same foot
 */
public record FindingKind(
    String id, String label, boolean defect, List<String> excludes, String topic) {}
