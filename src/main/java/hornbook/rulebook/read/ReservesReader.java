package hornbook.rulebook.read;

import hornbook.assessment.word.Word;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.YamlMap;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Extent;
import hornbook.rulebook.reserve.Move;
import hornbook.rulebook.reserve.Reserves;
import hornbook.rulebook.reserve.Until;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what a call for the vet holds back, and adds what its urgency holds back by itself. */
final class ReservesReader {
  /** Stands for every cut or move, and for every technique or support that is not first aid. */
  private static final String ALL = "all";

  private final List<NamedOption> techniques;
  private final List<NamedOption> supports;

  ReservesReader(List<NamedOption> techniques, List<NamedOption> supports) {
    this.techniques = techniques;
    this.supports = supports;
  }

  /** What is written under a rule's id; nothing where nothing is. */
  Reserves read(YamlMap text) {
    if (!text.has("reserves")) {
      return Reserves.NOTHING;
    }
    YamlMap one = text.map("reserves");
    one.only("techniques", "supports", "cuts", "moves", "for", "until", "days");
    Extent extent = one.word("for", Extent.class);
    Until until = one.word("until", Until.class);
    Integer days = one.has("days") ? (Integer) (int) one.number("days") : null;
    if ((until == Until.DAYS) != (days != null)) {
      one.fault(
          one.line(),
          "days and until: days belong together",
          "write until: days with days: 2, or take days out");
    }
    return new Reserves(
        known(one, "techniques", techniques),
        known(one, "supports", supports),
        constants(one, "cuts", Cut.class),
        constants(one, "moves", Move.class),
        extent == null ? Extent.FOOT : extent,
        until == null ? Until.VET_HAS_SEEN : until,
        days);
  }

  /**
   * With what the urgency holds back by itself: a call for now everything but first aid on every
   * foot of the horse, a call for today every technique and support but first aid on this foot.
   */
  Reserves effective(RuleConclusion outcome, Reserves written) {
    if (!(outcome instanceof RuleConclusion.Refers refers)
        || refers.urgency().compareTo(Urgency.TODAY) > 0) {
      return written;
    }
    boolean now = refers.urgency() == Urgency.NOW;
    return new Reserves(
            work(techniques),
            work(supports),
            now ? EnumSet.allOf(Cut.class) : Set.of(),
            now ? EnumSet.allOf(Move.class) : Set.of(),
            now ? Extent.HORSE : Extent.FOOT,
            now ? Until.VET_DIRECTS : Until.VET_HAS_SEEN,
            null)
        .and(written);
  }

  private static List<String> work(List<NamedOption> options) {
    return options.stream().filter(one -> !one.firstAid()).map(NamedOption::id).toList();
  }

  private static List<String> known(YamlMap one, String key, List<NamedOption> options) {
    List<String> all = options.stream().map(NamedOption::id).toList();
    Set<String> known = new LinkedHashSet<>();
    for (String id : one.texts(key)) {
      if (id.equals(ALL)) {
        known.addAll(work(options));
      } else if (all.contains(id)) {
        known.add(id);
      } else {
        one.fault(
            one.line(key),
            key + " cannot hold " + id,
            FaultCollector.nearest("the " + key + " stand in rulebook.yaml", id, all));
      }
    }
    return List.copyOf(known);
  }

  /** The constants whose words stand in the list under a key. */
  static <E extends Enum<E>> Set<E> constants(YamlMap one, String key, Class<E> type) {
    Set<E> known = EnumSet.noneOf(type);
    List<String> words = Arrays.stream(type.getEnumConstants()).map(ReservesReader::word).toList();
    for (String id : one.texts(key)) {
      if (id.equals(ALL)) {
        known.addAll(EnumSet.allOf(type));
      } else if (words.contains(id)) {
        known.add(type.getEnumConstants()[words.indexOf(id)]);
      } else {
        one.fault(
            one.line(key),
            key + " cannot hold " + id,
            FaultCollector.nearest("one of " + String.join(", ", words), id, words));
      }
    }
    return known;
  }

  private static String word(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
