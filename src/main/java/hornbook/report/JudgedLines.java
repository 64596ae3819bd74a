package hornbook.report;

import hornbook.advice.Judged;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.report.Section.Item;
import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Techniques or supports in a line each, those that one rule decides together. */
final class JudgedLines {
  private final Told told;

  JudgedLines(Told told) {
    this.told = told;
  }

  List<Item> of(Deciding deciding, List<Judged> all) {
    List<Item> items = new ArrayList<>();
    for (Map.Entry<String, List<Judged>> one : deciding.byRule(all).entrySet()) {
      List<Judged> together = one.getValue();
      String labels =
          together.stream()
              .map(judged -> told.label(judged.id()))
              .collect(Collectors.joining(", "));
      if (one.getKey().isEmpty()) {
        items.add(new Item(labels, "", notes(together), null));
      } else {
        items.add(decided(labels, together, one.getKey()));
      }
    }
    return items;
  }

  /** The title of the rule that decides; for one that stands alone, how many more say the same. */
  private Item decided(String labels, List<Judged> together, String rule) {
    Judged first = together.get(0);
    Bearing bearing =
        first.reasons().stream()
            .filter(one -> one.rule().equals(rule))
            .findFirst()
            .orElseThrow()
            .bearing();
    boolean told = first.verdict() == Verdict.WITH_VET || first.verdict() == Verdict.RULED_OUT;
    String lead =
        told && technique(first)
            ? labels
            : labels + ", " + (bearing == Bearing.NEEDS ? "but first" : bearing(bearing));
    String more = together.size() == 1 ? more(first, bearing) : "";
    return new Item(lead, this.told.title(rule) + more, notes(together), rule);
  }

  private boolean technique(Judged judged) {
    return told.book().technique(judged.id()) != null;
  }

  private String more(Judged judged, Bearing bearing) {
    long more = count(judged, bearing) - 1;
    long against = bearing == Bearing.FOR ? count(judged, Bearing.AGAINST) : 0;
    if (told.detail() == Detail.FULL) {
      return "";
    }
    String said = more > 0 ? ", and " + more + " more" : "";
    return said + (against > 0 ? "; against it " + against : "");
  }

  private static long count(Judged judged, Bearing bearing) {
    return judged.reasons().stream().filter(reason -> reason.bearing() == bearing).count();
  }

  /** In full, every reason of each by its title. */
  private List<String> notes(List<Judged> together) {
    List<String> notes = new ArrayList<>();
    if (told.detail() == Detail.FULL) {
      for (Judged judged : together) {
        String whose = together.size() > 1 ? told.label(judged.id()) + ", " : "";
        for (ReasonGiven reason : judged.reasons()) {
          notes.add(
              Sentence.capital(
                  whose + bearing(reason.bearing()) + ": " + told.title(reason.rule())));
        }
      }
    }
    return notes;
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
