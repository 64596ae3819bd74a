package hornbook.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.FactSheets;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.load.ShippedRules;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The feet that are measured on. */
final class Feet {
  static final LoadedRules RULES = ShippedRules.load();

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> LIMBS =
      List.of("left-fore", "right-fore", "left-hind", "right-hind");

  private Feet() {}

  /** Every case of the library and of the rules, as it lies there. */
  static List<byte[]> files() {
    List<byte[]> files = new ArrayList<>();
    for (String folder : List.of("cases/exercises", "cases/rules")) {
      try (Stream<Path> all = Files.list(Path.of(folder))) {
        for (Path file : all.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
          files.add(Files.readAllBytes(file));
        }
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
    }
    return files;
  }

  /** The exercises of one foot, each as one line of JSON. */
  static List<byte[]> lines() throws IOException {
    List<byte[]> lines = new ArrayList<>();
    try (Stream<Path> all = Files.list(Path.of("cases/exercises"))) {
      for (Path file : all.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
        Load yaml = new Load(LoadSettings.builder().build());
        JsonNode node =
            JSON.valueToTree(yaml.loadFromString(Files.readString(file))).path("assessment");
        if (node.path("feet").size() == 1) {
          lines.add(JSON.writeValueAsBytes(node));
        }
      }
    }
    return lines;
  }

  static Assessment read(byte[] file) {
    return ((ReadResult.Good) AssessmentReader.read(file, "foot", List.of())).assessment();
  }

  /** So many feet with so many stretches of wall each, sound and separated by turns. */
  static byte[] file(int feet, int stretches) {
    StringBuilder file = new StringBuilder("{\"format\": \"hornbook-assessment/1\",");
    file.append("\"horse\": {\"ageYears\": 7, \"weight\": \"520 kg\", \"work\": \"sport\"},");
    file.append("\"visit\": {\"date\": \"2026-03-14\", \"vet\": \"none\"}, \"feet\": [");
    for (int at = 0; at < feet; at++) {
      file.append(at == 0 ? "" : ",").append("{\"limb\": \"").append(LIMBS.get(at));
      file.append("\", \"lameness\": 1, \"shoeing\": \"nailed\", \"measures\": ");
      file.append("{\"toeLength\": 88, \"heelLength\": 33, \"toeAngle\": 50, \"heelAngle\": 45,");
      file.append("\"bearingLength\": 132, \"width\": 128, \"toeToWidest\": 60}, \"wall\": [");
      int side = Math.max(1, stretches / 2);
      for (int one = 0; one < 2 * side; one++) {
        int from = one % side * 150 / side;
        int to = (one % side + 1) * 150 / side;
        file.append(one == 0 ? "" : ",").append("{\"side\": \"");
        file.append(one < side ? "medial" : "lateral").append("\", \"from\": ").append(from);
        file.append(", \"to\": ").append(to).append(", \"height\": 25, \"moist\": false, ");
        file.append("\"thickness\": 9, \"state\": \"");
        file.append(one % 2 == 0 ? "sound" : "separated").append("\"}");
      }
      file.append("]}");
    }
    return file.append("]}").toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The sheets of every foot of every case. */
  static List<FactSheet> sheets() {
    FactSheets sheets = new FactSheets(RULES.book());
    List<FactSheet> all = new ArrayList<>();
    for (byte[] file : files()) {
      all.addAll(sheets.of(read(file)));
    }
    return all;
  }
}
