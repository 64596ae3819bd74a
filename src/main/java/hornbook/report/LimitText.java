package hornbook.report;

import hornbook.rulebook.fact.Limit;

/** A limit in words: what it limits, its value, where it comes from, and what others say. */
final class LimitText {
  private final Told told;

  LimitText(Told told) {
    this.told = told;
  }

  String line(Limit limit) {
    StringBuilder line = new StringBuilder(limit.label());
    line.append(", ").append(told.phrases().of(limit)).append(" (").append(limit.basis().word());
    if (Citations.work(limit.source())) {
      line.append(", ").append(told.citations().brief(limit.source()));
    }
    line.append(": ").append(told.phrases().plain(limit.locator())).append(")");
    for (Limit.Dispute dispute : limit.disputes()) {
      line.append("; ").append(told.citations().brief(dispute.source())).append(" says ");
      if (dispute.value() != null) {
        line.append(told.phrases().amounts().text(dispute.value(), limit.unit())).append(", ");
      }
      line.append(told.phrases().plain(dispute.says()));
    }
    return line.toString();
  }
}
