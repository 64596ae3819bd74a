package hornbook.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;

/** Entries written out by hand, with single quotes for double ones. */
final class Entries {
  private Entries() {}

  static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text.replace('\'', '"'));
    } catch (JsonProcessingException malformed) {
      throw new AssertionError(malformed);
    }
  }

  static Entry of(String text) {
    return new Entry(Digest.of(text.getBytes(StandardCharsets.UTF_8)), json(text));
  }

  /**
   * A visit to a left fore whose outer wall is broken away from 20 to 70 mm.
   *
   * @param foot more of the foot, beginning with a comma
   */
  static Entry visit(int number, String date, String height, String foot) {
    return of(
        """
        {'format': 'hornbook-entry/1', 'number': %d, 'horse': 'Tansy', 'by': 'Anna Smith',
         'written': '%sT10:00:00Z', 'chose': {'left-fore': 'glue-on'},
         'assessment': {'format': 'hornbook-assessment/1', 'horse': {'name': 'Tansy'},
           'visit': {'date': '%s'},
           'feet': [{'limb': 'left-fore', 'measures': {'toeLength': '90 mm'},
             'wall': [{'side': 'lateral', 'from': 20, 'to': 70, 'state': 'broken-away',
               'height': '%s'}]%s}]},
         'advice': {'feet': [{'limb': 'left-fore',
           'findings': [{'label': 'wall lost', 'defect': true}]}]},
         'ahead': {'left-fore': {'growth': {'slow': 4.2, 'mean': 8.5, 'fast': 12.7},
           'measuringError': 2}}}
        """
            .formatted(number, date, date, height, foot));
  }
}
