package hornbook.report.record;

import java.util.List;
import java.util.stream.Stream;

/**
 * A page of the record, before it takes a form.
 *
 * @param title what it is about
 * @param facts lines under the title
 * @param parts what stands on it, in the order it is read
 * @param closing lines at its end
 */
public record RecordPage(
    String title, List<String> facts, List<RecordPart> parts, List<String> closing) {
  public RecordPage {
    facts = List.copyOf(facts);
    parts = parts.stream().filter(part -> !part.empty()).toList();
    closing = List.copyOf(closing);
  }

  /** The same with more parts behind its own. */
  public RecordPage with(List<RecordPart> more) {
    return new RecordPage(
        title, facts, Stream.concat(parts.stream(), more.stream()).toList(), closing);
  }
}
