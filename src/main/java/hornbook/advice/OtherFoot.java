package hornbook.advice;

import hornbook.advice.fact.Held;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import java.util.List;
import java.util.Map;

/** Why a call for the vet on one foot holds something back on another. */
public final class OtherFoot {
  private OtherFoot() {}

  public static ReasonGiven reason(Held held, Basis basis) {
    String limb = held.from().word().replace('-', ' ');
    String says = "The " + limb + " foot calls the vet: " + lower(held.rule().title()) + ".";
    return new ReasonGiven(
        Bearing.NEEDS_VET,
        held.rule().id(),
        new Statement(says, Map.of()),
        null,
        null,
        false,
        List.of(),
        held.rule().text().sources(),
        basis,
        new HeldBack(held.reserves().until(), held.reserves().days(), held.from()));
  }

  private static String lower(String title) {
    return title.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + title.substring(1);
  }
}
