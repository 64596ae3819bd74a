package hornbook.report.words;

import hornbook.advice.FootAdvice;
import hornbook.advice.fact.Held;
import hornbook.assessment.Limb;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import hornbook.rulebook.reserve.Until;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What a call for the vet holds back, and until when, in plain words. */
public final class HeldWords {
  private HeldWords() {}

  /** What is waited for: {@code once the vet has looked}. */
  public static String once(Reserves reserves) {
    return once(reserves.until(), reserves.days());
  }

  public static String once(Until until, Integer days) {
    return "once " + until.event(days);
  }

  /** What a rule says, with until when it waits if a call holds back the cut it is about. */
  public static String waiting(String says, RuleEntry rule, Reserves held) {
    boolean waits =
        rule.text().does().stream()
            .anyMatch(deed -> held.cuts().stream().anyMatch(cut -> deed.endsWith(cut.word())));
    return waits ? says + " All cutting here waits: " + once(held) + "." : says;
  }

  /**
   * What other feet hold back on this one, a sentence for each foot. A danger that this foot calls
   * the vet for as soon by itself is shown there.
   */
  public static List<String> on(FootAdvice foot) {
    Map<Limb, List<Held>> byFoot = new LinkedHashMap<>();
    List<Held> all = foot.sheet().held().stream().filter(held -> !calls(foot, held)).toList();
    all.forEach(held -> byFoot.computeIfAbsent(held.from(), limb -> new ArrayList<>()).add(held));
    List<String> lines = new ArrayList<>();
    byFoot.forEach((limb, calls) -> lines.add(line(limb, calls)));
    return lines;
  }

  private static boolean calls(FootAdvice foot, Held held) {
    return foot.referrals().stream()
        .anyMatch(
            own -> own.id().equals(held.danger()) && own.urgency().compareTo(held.urgency()) <= 0);
  }

  private static String line(Limb limb, List<Held> calls) {
    Urgency soonest = calls.stream().map(Held::urgency).min(Comparator.naturalOrder()).get();
    String names =
        mostTelling(calls).stream()
            .sorted(Comparator.comparing(Held::urgency))
            .map(held -> held.rule().title() + " [" + held.rule().id() + "]")
            .collect(Collectors.joining("; "));
    return "VET "
        + RuleWords.soon(soonest).toUpperCase(Locale.ROOT)
        + " for the "
        + FieldNames.of(limb)
        + ": "
        + names
        + ". The horse stands on this foot to spare that one, so the work here waits for that call.";
  }

  /** Of calls for one danger the most urgent, of equals the one that asks for most. */
  private static Collection<Held> mostTelling(List<Held> calls) {
    Map<String, Held> told = new LinkedHashMap<>();
    calls.stream()
        .sorted(
            Comparator.comparing(Held::urgency)
                .thenComparing(held -> -held.rule().conditions().size()))
        .forEach(held -> told.putIfAbsent(held.danger(), held));
    return told.values();
  }
}
