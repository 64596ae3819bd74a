package hornbook.rulebook.fact;

import java.util.List;

/** A reason to call the vet, and how soon. */
public record Referral(Urgency urgency, String id, List<CitedFact> because) implements Conclusion {
  public Referral {
    because = List.copyOf(because);
  }

  public static Referral now(String id, CitedFact... because) {
    return new Referral(Urgency.NOW, id, List.of(because));
  }

  public static Referral today(String id, CitedFact... because) {
    return new Referral(Urgency.TODAY, id, List.of(because));
  }

  public static Referral days(String id, CitedFact... because) {
    return new Referral(Urgency.DAYS, id, List.of(because));
  }

  public static Referral mention(String id, CitedFact... because) {
    return new Referral(Urgency.MENTION, id, List.of(because));
  }
}
