package hornbook.report.study;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Statement;
import hornbook.report.words.Citations;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.explain.ChainLink;
import hornbook.study.explain.RuleChain;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A chain from the fields of the file up to what its rule says, row by row. */
final class ChainRows {
  /** Findings are followed so far down where not all is told. */
  private static final int DEEPEST = 2;

  /** What gives way where there is no room for all, the greater the sooner. */
  private static final int OBSERVED = 1;

  private static final int LIMIT = 2;
  private static final int SOURCES = 3;
  private static final int BESIDE = 4;
  private static final int SAYS = 8;

  private final Rulebook book;
  private final FootAdvice foot;
  private final Phrases phrases;
  private final RuleWords words;
  private final Citations citations;
  private final ChainLinkText links;
  private final boolean all;

  /**
   * @param all whether every link is told, or only what the answer rests on
   */
  ChainRows(Rulebook book, FootAdvice foot, Phrases phrases, boolean all) {
    this.book = book;
    this.foot = foot;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
    this.citations = new Citations(book);
    this.links = new ChainLinkText(book, phrases);
    this.all = all;
  }

  /** The rows of a chain, the rule itself last. */
  List<ExplanationRow> of(RuleChain chain, int indent) {
    List<ExplanationRow> rows = new ArrayList<>();
    addLinks(rows, chain, indent, 0, 0);
    add(rows, indent, SOURCES, sources(chain));
    add(rows, indent, 0, concludes(chain));
    if (chain.fired()) {
      add(rows, indent, SAYS, says(chain.rule()));
    }
    return rows;
  }

  /** A chain that stayed silent in one or two rows: the rule, and what keeps it so. */
  List<ExplanationRow> obstacle(RuleChain chain, int indent) {
    List<ExplanationRow> rows = new ArrayList<>();
    rows.add(new ExplanationRow(indent, 0, concludes(chain)));
    chain
        .obstacle()
        .ifPresent(
            link ->
                rows.add(
                    new ExplanationRow(indent + 2, 0, links.comparison(link, chain.rule(), all))));
    return rows;
  }

  private void addLinks(
      List<ExplanationRow> rows, RuleChain chain, int indent, int weight, int depth) {
    ChainLink main = chain.obstacle().orElse(chain.links().isEmpty() ? null : first(chain));
    for (ChainLink link : chain.links()) {
      boolean told = link == main || all || chain.fired();
      if (told) {
        addLink(rows, link, chain.rule(), indent, weight + (link == main ? 0 : BESIDE), depth);
      }
    }
  }

  /** The first link that was observed on the foot itself, where there is one. */
  private static ChainLink first(RuleChain chain) {
    return chain.links().stream()
        .filter(link -> link.makers().isEmpty())
        .findFirst()
        .orElse(chain.links().get(0));
  }

  private void addLink(
      List<ExplanationRow> rows,
      ChainLink link,
      RuleEntry rule,
      int indent,
      int weight,
      int depth) {
    if (link.condition() instanceof Condition.OfFinding) {
      addMakers(rows, link, indent + 2, weight, depth);
      String by = madeBy(link);
      add(rows, indent, weight, links.comparison(link, rule, all) + by);
      return;
    }
    if (!ChainLinkText.inOne(link)) {
      add(rows, indent, weight + OBSERVED, links.observed(link, all));
    }
    add(rows, indent, weight, links.comparison(link, rule, all));
    add(rows, indent, weight + LIMIT, links.limit(link, all));
  }

  private void addMakers(
      List<ExplanationRow> rows, ChainLink link, int indent, int weight, int depth) {
    if (!all && depth == DEEPEST) {
      return;
    }
    List<RuleChain> makers = link.decidingMakers();
    for (RuleChain maker : all ? makers : makers.subList(0, Math.min(1, makers.size()))) {
      addLinks(rows, maker, indent, weight, depth + 1);
      if (all) {
        add(rows, indent, weight, concludes(maker));
      }
    }
  }

  private String madeBy(ChainLink link) {
    List<RuleChain> makers = link.decidingMakers();
    return makers.isEmpty() ? "" : " (" + makers.get(0).rule().id() + ")";
  }

  /** What the rule concludes, or would. */
  private String concludes(RuleChain chain) {
    String title = chain.rule().title() + " (" + chain.rule().id() + ")";
    String outcome = words.outcome(chain.rule());
    return switch (chain.truth()) {
      case TRUE -> "so: " + title + ": " + outcome;
      case FALSE -> "silent: " + title + ", which " + outcome;
      case UNKNOWN -> "open: " + title + ", which " + outcome;
    };
  }

  private String sources(RuleChain chain) {
    Set<String> keys = new LinkedHashSet<>(chain.rule().text().sources());
    chain.links().stream()
        .flatMap(link -> Stream.ofNullable(link.asked()))
        .map(Limit::source)
        .forEach(keys::add);
    List<String> works = citations.brief(keys);
    String basis = chain.basis().word();
    return works.isEmpty()
        ? "source: none; basis " + basis
        : "source: " + String.join("; ", works) + "; basis " + basis;
  }

  /** What the rule says of this foot; the empty text where it is told nowhere. */
  private String says(RuleEntry rule) {
    return Stream.of(
            foot.referrals().stream()
                .filter(one -> one.rule().equals(rule.id()))
                .map(one -> one.says()),
            foot.findings().stream()
                .filter(one -> one.rule().equals(rule.id()))
                .map(one -> one.says()),
            foot.cautions().stream()
                .filter(one -> one.rule().equals(rule.id()))
                .map(one -> one.says()),
            Stream.concat(foot.techniques().stream(), foot.supports().stream())
                .flatMap(judged -> reasons(judged, rule)))
        .flatMap(says -> says)
        .findFirst()
        .map(phrases::says)
        .orElse("");
  }

  private static Stream<Statement> reasons(OptionAdvice judged, RuleEntry rule) {
    return judged.reasons().stream()
        .filter(reason -> reason.rule().equals(rule.id()))
        .map(ReasonGiven::says);
  }

  private static void add(List<ExplanationRow> rows, int indent, int weight, String text) {
    if (!text.isEmpty()) {
      rows.add(new ExplanationRow(indent, weight, text));
    }
  }
}
