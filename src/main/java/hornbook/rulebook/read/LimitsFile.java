package hornbook.rulebook.read;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.YamlMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Reads a topic's limits. */
final class LimitsFile {
  private static final Set<String> UNITS =
      Set.of(
          "",
          "mm",
          "cm",
          "deg",
          "%",
          "kg",
          "C",
          "days",
          "weeks",
          "months",
          "minutes",
          "hours",
          "grade",
          "psi",
          "ratio",
          "mm/month",
          "N/kg",
          "ppm",
          "g/cm3");

  private LimitsFile() {}

  static List<Limit> read(String file, String text, FaultCollector faults) {
    List<Limit> limits = new ArrayList<>();
    for (YamlMap entry : YamlMap.list(file, text, faults.all())) {
      entry.only(
          "id",
          "label",
          "value",
          "unit",
          "direction",
          "inclusive",
          "limbs",
          "age",
          "source",
          "locator",
          "basis",
          "safer",
          "step",
          "disputes",
          "uses");
      Limit.Direction direction = entry.word("direction", Limit.Direction.class);
      Basis basis = entry.word("basis", Basis.class);
      Limit.Safer safer = entry.word("safer", Limit.Safer.class);
      String unit = entry.optional("unit");
      if (unit == null || !UNITS.contains(unit)) {
        entry.fault(
            entry.line("unit"),
            unit == null ? "unit is missing" : "there is no unit " + unit,
            "one of " + UNITS.stream().sorted().toList());
      }
      for (String key : List.of("direction", "basis", "safer")) {
        entry.text(key);
      }
      if (direction == null || basis == null || safer == null) {
        faults.drop();
        continue;
      }
      Limit limit =
          new Limit(
              entry.text("id"),
              entry.text("label"),
              entry.number("value"),
              unit,
              direction,
              entry.flag("inclusive", true),
              entry.word("limbs", Limit.Limbs.class),
              entry.word("age", Limit.Age.class),
              entry.text("source"),
              entry.text("locator"),
              basis,
              safer,
              entry.number("step"),
              disputes(entry),
              computing(entry));
      limits.add(limit);
      faults.place(limit, file, entry.line());
    }
    return limits;
  }

  private static boolean computing(YamlMap entry) {
    String uses = entry.optional("uses");
    if (uses != null && !uses.equals("computing")) {
      entry.fault(entry.line("uses"), "uses cannot be " + uses, "computing, or leave uses out");
    }
    return uses != null;
  }

  private static List<Limit.Dispute> disputes(YamlMap entry) {
    List<Limit.Dispute> disputes = new ArrayList<>();
    for (YamlMap dispute : entry.maps("disputes")) {
      dispute.only("value", "source", "says");
      disputes.add(
          new Limit.Dispute(
              dispute.states("value") ? (Double) dispute.number("value") : null,
              dispute.text("source"),
              dispute.text("says")));
    }
    return List.copyOf(disputes);
  }
}
