package hornbook.assessment.form;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.FileText;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.CommentEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Comments that somebody wrote by hand in an assessment file: writing it anew would lose them. */
public final class OwnComments {
  private static final String SCHEMA = "yaml-language-server:";

  private OwnComments() {}

  /**
   * The comments that {@link BlankAssessment} does not write, in their order.
   *
   * @param yaml a file that was read without a fault
   * @param known what it holds
   */
  public static List<String> in(String yaml, Assessment known) {
    List<Limb> limbs = known.feet().stream().map(Foot::limb).toList();
    StringBuilder ours = new StringBuilder();
    for (Units units : Units.values()) {
      ours.append(String.join(" ", comments(BlankAssessment.write(known, units, null))));
      ours.append(' ')
          .append(String.join(" ", comments(BlankAssessment.write(limbs, units, null))));
    }
    return comments(yaml).stream()
        .filter(comment -> !comment.startsWith(SCHEMA) && ours.indexOf(comment) < 0)
        .toList();
  }

  /** Every comment, a line each, with single spaces: its lines may be broken otherwise. */
  private static List<String> comments(String yaml) {
    LoadSettings settings =
        LoadSettings.builder()
            .setParseComments(true)
            .setCodePointLimit(FileText.LARGEST + 1)
            .setBufferSize(yaml.length() + 1)
            .build();
    ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, yaml));
    List<String> comments = new ArrayList<>();
    while (parser.hasNext()) {
      Event event = parser.next();
      if (event instanceof CommentEvent comment) {
        String words = comment.getValue().strip().replaceAll("\\s+", " ");
        if (!words.isEmpty()) {
          comments.add(words);
        }
      }
    }
    return comments;
  }
}
