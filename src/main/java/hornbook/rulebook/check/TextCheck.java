package hornbook.rulebook.check;

import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.RuleText;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Shown;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.file.FaultCollector;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the texts of the rules can be filled, and hold what their kind of conclusion needs. */
final class TextCheck {
  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)}");

  private final Rulebook book;
  private final FaultCollector faults;

  TextCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  void check() {
    book.rules().values().forEach(this::rule);
  }

  private void shown(RuleEntry rule) {
    Shown shown = rule.text().shown();
    if (shown == Shown.IN_FULL && !(rule.outcome() instanceof RuleConclusion.Cautions)) {
      faults.at(rule, "only a caution may be kept to full pages", "take shown out");
    }
    boolean mention =
        rule.outcome() instanceof RuleConclusion.Refers refers
            && refers.urgency() == Urgency.MENTION
            && rule.text().reserves().nothing();
    if (shown == Shown.UNLESS_CALLED_SOONER && !mention) {
      faults.at(
          rule,
          "only a call to mention that reserves nothing may give way to a sooner one",
          "take shown out");
    }
  }

  private void rule(RuleEntry rule) {
    RuleText text = rule.text();
    holes(rule, text.says());
    holes(rule, text.meanwhile() == null ? "" : text.meanwhile());
    boolean referral = rule.outcome() instanceof RuleConclusion.Refers;
    if (referral && text.meanwhile() == null) {
      faults.at(
          rule, "a referral has to say what to do meanwhile", "write meanwhile: … beside its says");
    }
    if (!referral && text.meanwhile() != null) {
      faults.at(rule, "only a referral has a meanwhile", "take it out, or call the vet");
    }
    if (!text.techniques().isEmpty() && !(rule.outcome() instanceof RuleConclusion.Cautions)) {
      faults.at(
          rule,
          "only a caution may be kept to techniques",
          "take techniques out; a reason names them in its conclusion");
    }
    shown(rule);
    for (String technique : text.techniques()) {
      if (book.technique(technique) == null) {
        faults.at(
            rule,
            "there is no technique " + technique,
            FaultCollector.nearest(
                "the techniques stand in rulebook.yaml",
                technique,
                book.techniques().stream().map(NamedOption::id).toList()));
      }
    }
  }

  private void holes(RuleEntry rule, String text) {
    Set<String> cited = new HashSet<>(rule.outcome().cites());
    Matcher hole = HOLE.matcher(text);
    while (hole.find()) {
      if (!cited.contains(hole.group(1))) {
        faults.at(
            rule,
            "the text has a hole {" + hole.group(1) + "} that no cited fact fills",
            FaultCollector.nearest("name it as the rule does", hole.group(1), cited));
      }
    }
    String rest = HOLE.matcher(text).replaceAll("");
    if (rest.contains("{") || rest.contains("}")) {
      faults.at(
          rule,
          "a brace in the text is no hole",
          "write {name} with a name the rule binds, without spaces");
    }
  }
}
