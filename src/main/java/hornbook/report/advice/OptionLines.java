package hornbook.report.advice;

import hornbook.advice.HeldBack;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.report.page.Section.Item;
import hornbook.report.words.DecidingReason;
import hornbook.report.words.Detail;
import hornbook.report.words.HeldWords;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Techniques or supports in a line each, those that one rule decides together. */
final class OptionLines {
  private static final int MOST_OTHERS = 2;

  private final PageContext told;

  OptionLines(PageContext told) {
    this.told = told;
  }

  List<Item> of(DecidingReason deciding, List<OptionAdvice> all) {
    if (told.detail() == Detail.FULL) {
      return all.stream().map(this::inFull).toList();
    }
    List<Item> items = new ArrayList<>();
    for (Map.Entry<String, List<OptionAdvice>> one : deciding.byRule(all).entrySet()) {
      for (List<OptionAdvice> together : alike(one.getValue())) {
        String labels = labels(together);
        items.add(
            one.getKey().isEmpty() ? Item.of(labels, "") : decided(labels, together, one.getKey()));
      }
    }
    return items;
  }

  /** By name; where that is most of all there are, those left out. */
  private String labels(List<OptionAdvice> together) {
    boolean technique = technique(together.get(0));
    List<NamedOption> all = technique ? told.book().techniques() : told.book().supports();
    List<String> named = together.stream().map(OptionAdvice::id).toList();
    List<String> others =
        all.stream()
            .map(NamedOption::id)
            .filter(id -> !named.contains(id))
            .map(told::label)
            .toList();
    String every = technique ? "every technique" : "every support";
    if (others.isEmpty()) {
      return every;
    }
    return others.size() <= MOST_OTHERS
        ? every + " except " + String.join(" and ", others)
        : named.stream().map(told::label).collect(Collectors.joining(", "));
  }

  /** One line serves only those that the same rules speak against. */
  private static Collection<List<OptionAdvice>> alike(List<OptionAdvice> all) {
    Map<List<String>, List<OptionAdvice>> alike = new LinkedHashMap<>();
    for (OptionAdvice judged : all) {
      alike.computeIfAbsent(objections(judged), rules -> new ArrayList<>()).add(judged);
    }
    return alike.values();
  }

  private static List<String> objections(OptionAdvice judged) {
    List<String> all = new ArrayList<>(objections(judged, Bearing.NEEDS));
    all.addAll(objections(judged, Bearing.AGAINST));
    return all;
  }

  private static List<String> objections(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream()
        .filter(one -> judged.verdict() == Verdict.WORKABLE && one.bearing() == bearing)
        .map(ReasonGiven::rule)
        .toList();
  }

  /** Every reason by its title, those of one bearing in a line. */
  private Item inFull(OptionAdvice judged) {
    List<String> notes = new ArrayList<>();
    Bearing[] weightiest = Bearing.values();
    for (int i = weightiest.length - 1; i >= 0; i--) {
      Bearing bearing = weightiest[i];
      String titles =
          judged.reasons().stream()
              .filter(reason -> reason.bearing() == bearing)
              .map(reason -> told.title(reason.rule()))
              .collect(Collectors.joining("; "));
      if (!titles.isEmpty()) {
        notes.add(Sentence.capital(bearing(bearing)) + ": " + titles);
      }
    }
    return new Item(told.label(judged.id()), "", notes, null);
  }

  /** The title of the rule that decides; for one that stands alone, how many more say the same. */
  private Item decided(String labels, List<OptionAdvice> together, String rule) {
    OptionAdvice first = together.get(0);
    ReasonGiven reason =
        first.reasons().stream().filter(one -> one.rule().equals(rule)).findFirst().orElseThrow();
    Bearing bearing = reason.bearing();
    boolean told = first.verdict() == Verdict.WITH_VET || first.verdict() == Verdict.RULED_OUT;
    String lead =
        told && technique(first)
            ? labels
            : labels + ", " + (bearing == Bearing.NEEDS ? "but first" : bearing(bearing));
    String more = together.size() == 1 ? more(first, bearing) : "";
    more += objections(first, rule);
    more += first.verdict() == Verdict.WITH_VET ? until(reason) : "";
    return new Item(
        lead, this.told.title(rule) + more, List.of(), rule, named(lead, first, reason));
  }

  /** By name with its rules: what objects to it is never left out. */
  private static String named(String lead, OptionAdvice judged, ReasonGiven deciding) {
    List<String> alike = new ArrayList<>(List.of(deciding.rule()));
    StringBuilder others = new StringBuilder();
    for (Bearing bearing : List.of(Bearing.NEEDS, Bearing.AGAINST)) {
      List<String> besides = new ArrayList<>(objections(judged, bearing));
      besides.remove(deciding.rule());
      if (bearing == deciding.bearing()) {
        alike.addAll(besides);
      } else if (!besides.isEmpty()) {
        others.append(", ").append(bearing(bearing)).append(" ").append(besides);
      }
    }
    return lead + " " + alike + others;
  }

  private static String until(ReasonGiven reason) {
    HeldBack held = reason.heldBack();
    return held == null ? "" : " (" + HeldWords.once(held.until(), held.days()) + ")";
  }

  private boolean technique(OptionAdvice judged) {
    return told.book().technique(judged.id()) != null;
  }

  private String more(OptionAdvice judged, Bearing bearing) {
    long more = count(judged, bearing) - 1;
    boolean listed = judged.verdict() == Verdict.WORKABLE && bearing != Bearing.FOR;
    return more > 0 && !listed ? ", and " + more + " more" : "";
  }

  /** What else is against it or has to be done first, each by its title. */
  private String objections(OptionAdvice judged, String besides) {
    StringBuilder all = new StringBuilder();
    if (judged.verdict() == Verdict.WORKABLE) {
      for (ReasonGiven reason : judged.reasons()) {
        boolean objects = reason.bearing() == Bearing.AGAINST || reason.bearing() == Bearing.NEEDS;
        if (objects && !reason.rule().equals(besides)) {
          all.append("; ").append(bearing(reason.bearing())).append(": ");
          all.append(told.title(reason.rule()));
        }
      }
    }
    return all.toString();
  }

  private static long count(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream().filter(reason -> reason.bearing() == bearing).count();
  }

  /** The bearing in plain words. */
  static String bearing(Bearing bearing) {
    return switch (bearing) {
      case FOR -> "for it";
      case AGAINST -> "against it";
      case NEEDS -> "first";
      case NEEDS_VET -> "the vet first";
      case RULES_OUT -> "ruled out";
    };
  }
}
