package hornbook.report.words;

import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Limit;

/** A limit in words: what it limits, its value, where it comes from, and what others say. */
public final class LimitText {
  private final Phrases phrases;
  private final Citations citations;

  public LimitText(Phrases phrases, Citations citations) {
    this.phrases = phrases;
    this.citations = citations;
  }

  /** All of it in one line. */
  public String line(Limit limit) {
    StringBuilder line = new StringBuilder(alone(limit));
    limit.disputes().forEach(dispute -> line.append("; but ").append(other(limit, dispute)));
    return line.toString();
  }

  /** Without what others say. */
  public String alone(Limit limit) {
    return limit.label() + ": " + phrases.of(limit) + " (" + ground(limit) + ")";
  }

  /** How good its ground is, and where it lies: {@code published, Turner 1992: p. 3}. */
  public String ground(Limit limit) {
    String work = Source.work(limit.source()) ? ", " + citations.brief(limit.source()) : "";
    return limit.basis().word() + work + ": " + phrases.plain(citations.locator(limit));
  }

  /** What another author says: {@code Hunting 1895: 2, four or five in all hold a small shoe}. */
  public String other(Limit limit, Limit.Dispute dispute) {
    String value =
        dispute.value() == null ? "" : phrases.amounts().text(dispute.value(), limit.unit()) + ", ";
    return citations.brief(dispute.source()) + ": " + value + phrases.plain(dispute.says());
  }
}
