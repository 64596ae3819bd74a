package hornbook.advice.engine;

import hornbook.advice.FindingGiven;
import hornbook.advice.MeasureGiven;
import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbers of a foot with the names its rules give them. */
final class MeasureNames {
  private MeasureNames() {}

  static List<MeasureGiven> of(FactSheet sheet, List<FindingGiven> findings) {
    Map<String, FindingGiven> named = new LinkedHashMap<>();
    for (FindingGiven finding : findings) {
      finding.because().stream()
          .filter(Reading.class::isInstance)
          .forEach(fact -> named.putIfAbsent(((Reading) fact).what(), finding));
    }
    List<MeasureGiven> given = new ArrayList<>();
    for (Reading reading : sheet.readings().values()) {
      FindingGiven finding = named.get(reading.what());
      given.add(
          new MeasureGiven(
              reading,
              Subjects.label(reading.what()),
              Subjects.unit(reading.what()),
              finding == null ? null : finding.id(),
              finding == null ? null : finding.says(),
              finding == null ? List.of() : finding.sources()));
    }
    return List.copyOf(given);
  }
}
