package hornbook.assessment;

import java.util.List;

/**
 * One visit to one horse, as written down. Groups are never null; a value that was not looked at is
 * null.
 */
public record Assessment(Horse horse, Visit visit, List<Foot> feet, Kit kit) {
  public java.util.Optional<Foot> foot(Limb limb) {
    return feet.stream().filter(foot -> foot.limb() == limb).findFirst();
  }
}
