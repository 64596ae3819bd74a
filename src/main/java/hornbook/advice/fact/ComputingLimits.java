package hornbook.advice.fact;

import hornbook.foot.FootLimits;
import hornbook.foot.GrowthRates;
import hornbook.foot.TrimLimits;
import hornbook.foot.UsualToeLength;
import hornbook.foot.shape.OutlineShape;
import hornbook.foot.wall.CrackRegions;
import hornbook.foot.wall.NailingLimits;
import hornbook.rulebook.fact.Limit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Fills the limits that the computing of a foot takes as arguments from those of the rule base. */
public final class ComputingLimits {
  private static final String USUAL_TOE = "toe.usual-light";
  private static final Set<String> TAKEN = asked(false);
  private static final Set<String> TAKEN_OF_GROWN = asked(true);

  private final Map<String, Limit> limits;
  private final Set<String> missing = new TreeSet<>();

  private ComputingLimits(Map<String, Limit> limits) {
    this.limits = limits;
  }

  /** From the limits that hold for the limb and age in hand. */
  public static FootLimits of(Map<String, Limit> limits) {
    ComputingLimits computing = new ComputingLimits(limits);
    FootLimits all = computing.all();
    if (!computing.missing.isEmpty()) {
      throw new IllegalStateException(
          "the rule base has no limit " + computing.missing + " for such a foot");
    }
    return all;
  }

  /** The ids of limits that the computing takes and these are without. */
  public static Set<String> missing(Map<String, Limit> limits) {
    Set<String> missing = new TreeSet<>(TAKEN);
    if (limits.containsKey(USUAL_TOE)) {
      missing.addAll(TAKEN_OF_GROWN);
    }
    missing.removeAll(limits.keySet());
    return missing;
  }

  /** All that is asked for when nothing is there to be had. */
  private static Set<String> asked(boolean grown) {
    ComputingLimits computing = new ComputingLimits(Map.of());
    if (grown) {
      computing.bands();
    } else {
      computing.all();
    }
    return computing.missing;
  }

  private FootLimits all() {
    return new FootLimits(
        new OutlineShape(
            share("outline.fore-widest"),
            share("outline.hind-widest"),
            share("outline.heel-width")),
        share("outline.edge-slack"),
        new NailingLimits(
            value("nails.spacing"),
            value("nails.toe-clearance"),
            value("nails.end-clearance"),
            value("nails.wall.least"),
            share("nails.fore-rearmost"),
            share("nails.hind-rearmost"),
            share("nails.waived-rearmost"),
            new CrackRegions(
                share("wall.toe-end"), share("wall.side-end"), share("wall.heel-start"))),
        value("nails.exit.usual"),
        new GrowthRates(value("growth.slow"), value("growth.mean"), value("growth.fast")),
        usualToe(),
        value("age.grown"),
        new TrimLimits(value("trim.usual"), value("trim.most")),
        value("loss.tall"),
        value("age.birth-hoof"),
        value("judged.days"),
        value("small.animal"),
        value("own-growth.days"));
  }

  /** A foal has no usual toe length: then the table is empty. */
  private UsualToeLength usualToe() {
    return new UsualToeLength(limits.containsKey(USUAL_TOE) ? bands() : List.of());
  }

  private List<UsualToeLength.Band> bands() {
    return List.of(band("light"), band("medium"), band("heavy"));
  }

  private UsualToeLength.Band band(String name) {
    return new UsualToeLength.Band(
        value("toe." + name + "-from"), value("toe." + name + "-to"), value("toe.usual-" + name));
  }

  private double share(String id) {
    return value(id) / 100;
  }

  private double value(String id) {
    Limit limit = limits.get(id);
    if (limit == null) {
      missing.add(id);
      return missing.size();
    }
    return limit.value();
  }
}
