package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Entry;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What calls the vet to a horse, in lines for its owner: who has to come, how soon and for what, in
 * a sentence; then what to do until then, the most urgent first. Nothing to be done is left out.
 */
final class OwnerCalls {
  private static final String WHAT_TO_DO = "What to do: ";
  private static final int MOST = 4;
  private static final List<String> ORDER = List.of("now", "today", "days");

  /** What the line above it says already. */
  private static final Pattern SAID =
      Pattern.compile("(Call the vet now|Have the vet see it today)\\.");

  private final List<String> calls = new ArrayList<>();
  private final List<String> meanwhile = new ArrayList<>();

  private OwnerCalls() {}

  static OwnerCalls of(List<JsonNode> feet) {
    Map<String, Set<String>> limbs = new LinkedHashMap<>();
    Map<String, JsonNode> referrals = new LinkedHashMap<>();
    for (JsonNode foot : feet) {
      for (JsonNode referral : AdviceTree.all(foot, "referrals")) {
        if (AdviceTree.calls(referral)) {
          String says = urgency(referral) + " " + Entry.text(referral, "says");
          referrals.putIfAbsent(says, referral);
          limbs.computeIfAbsent(says, one -> new LinkedHashSet<>()).add(AdviceTree.limb(foot));
        }
      }
    }
    OwnerCalls all = new OwnerCalls();
    Set<String> told = new LinkedHashSet<>();
    referrals.keySet().stream()
        .sorted(Comparator.comparingInt(says -> ORDER.indexOf(urgency(referrals.get(says)))))
        .forEach(
            says -> {
              JsonNode referral = referrals.get(says);
              boolean some = limbs.get(says).size() < feet.size();
              all.call(referral, some ? String.join(" and ", limbs.get(says)) : "", told);
            });
    return all;
  }

  private static String urgency(JsonNode referral) {
    return String.valueOf(Entry.text(referral, "urgency"));
  }

  private void call(JsonNode referral, String limbs, Set<String> told) {
    String foot = limbs.isEmpty() ? "" : ", for the " + limbs;
    String who =
        switch (urgency(referral)) {
          case "now" -> "Ring the vet NOW" + foot;
          case "today" -> "Have the vet see the horse TODAY" + foot;
          default -> "Have the vet see the horse within days" + foot;
        };
    calls.add(who + ". " + Sentence.split(Entry.text(referral, "says")).get(0));
    List<String> sentences =
        Stream.ofNullable(Entry.text(referral, "meanwhile"))
            .flatMap(meanwhile -> Sentence.split(meanwhile).stream())
            .filter(one -> !SAID.matcher(one).matches())
            .filter(told::add)
            .toList();
    if (!sentences.isEmpty()) {
      meanwhile.add(String.join(" ", sentences));
    }
  }

  boolean any() {
    return !calls.isEmpty();
  }

  /** At most eight lines. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (calls.size() <= MOST) {
      lines.addAll(calls);
    } else {
      lines.addAll(calls.subList(0, MOST - 1));
      int more = calls.size() - MOST + 1;
      lines.add("Give the vet the farrier's letter: it names " + more + " more signs.");
    }
    int shown = meanwhile.size() <= MOST ? meanwhile.size() : MOST - 1;
    meanwhile.subList(0, shown).forEach(one -> lines.add(WHAT_TO_DO + one));
    if (shown < meanwhile.size()) {
      lines.add(WHAT_TO_DO + String.join(" ", meanwhile.subList(shown, meanwhile.size())));
    }
    return lines;
  }
}
