package hornbook.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.assessment.quantity.Units;
import hornbook.report.words.ObservedText;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Stretch;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What was seen and measured that brought a call for the vet or a finding about: signs, and nothing
 * that is concluded from them.
 */
final class KeptSigns {
  private static final String YES = "yes";

  private final ObjectNode kept;
  private final ObservedText observed;

  private KeptSigns(ObjectNode kept, Rulebook book) {
    this.kept = kept;
    this.observed = new ObservedText(new Phrases(book, Units.MM));
  }

  /** Puts the signs, by the rule that took them up, into what is kept for the foot. */
  static void keep(ObjectNode ahead, FootAdvice foot, Rulebook book) {
    KeptSigns signs = new KeptSigns(ahead, book);
    for (ReferralGiven referral : foot.referrals()) {
      signs.of(referral.rule(), referral.because());
    }
    for (FindingGiven finding : foot.findings()) {
      if (finding.defect()) {
        signs.of(finding.rule(), finding.because());
      }
    }
  }

  private void of(String rule, List<CitedFact> because) {
    Set<String> signs = new LinkedHashSet<>();
    collect(because, signs);
    signs.forEach(kept.withObject("/signs").withArray(rule)::add);
  }

  private void collect(List<CitedFact> because, Set<String> signs) {
    for (CitedFact fact : because) {
      if (fact instanceof Finding finding) {
        collect(finding.because(), signs);
      } else if (fact instanceof Crack crack) {
        signs.add(observed.line(crack) + ofCrack(crack));
      } else if (fact instanceof Stretch stretch) {
        signs.add(observed.line(stretch) + ofStretch(stretch));
      } else if (!(fact instanceof Limit)) {
        signs.add(observed.line(fact));
      }
    }
  }

  private static String ofCrack(Crack crack) {
    return (crack.starts() == null ? "" : ", from the " + started(crack.starts()))
        + (crack.depth() == null ? "" : ", " + crack.depth())
        + (YES.equals(crack.bleeds()) ? ", bleeds" : "")
        + (YES.equals(crack.moves()) ? ", moves as the horse loads the foot" : "");
  }

  private static String started(String starts) {
    return switch (starts) {
      case "coronet" -> "coronary band down";
      case "full" -> "coronary band to the ground";
      default -> "ground up";
    };
  }

  private static String ofStretch(Stretch stretch) {
    return YES.equals(stretch.moist())
        ? ", stays damp after cleaning or weeps when pressed"
        : YES.equals(stretch.damp()) ? ", damp from the yard" : "";
  }
}
