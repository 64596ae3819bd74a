package hornbook.rulebook;

import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;

/** A kind of foot that limits are told apart by: its limb and the age of the horse. */
public record FootKind(Limit.Limbs limbs, Limit.Age age) {
  public static final List<FootKind> ALL = all();

  private static List<FootKind> all() {
    List<FootKind> all = new ArrayList<>();
    for (Limit.Age age : Limit.Age.values()) {
      for (Limit.Limbs limbs : Limit.Limbs.values()) {
        all.add(new FootKind(limbs, age));
      }
    }
    return List.copyOf(all);
  }

  public boolean holds(Limit limit) {
    return (limit.limbs() == null || limit.limbs() == limbs)
        && (limit.age() == null || limit.age() == age);
  }

  /** The word a foot of this kind shows in one of the fields that tell kinds apart, or null. */
  public String word(String field) {
    return switch (field) {
      case "limbs" -> limbs == Limit.Limbs.FORE ? "fore" : "hind";
      case "age" -> age == Limit.Age.ADULT ? "adult" : "foal";
      default -> null;
    };
  }

  @Override
  public String toString() {
    String foot = limbs == Limit.Limbs.FORE ? "fore foot" : "hind foot";
    return "a " + (age == Limit.Age.ADULT ? "grown horse's " : "foal's ") + foot;
  }
}
