package hornbook.advice.fact;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Judged;
import hornbook.assessment.VetRole;
import hornbook.assessment.field.Field;
import hornbook.assessment.word.Word;
import hornbook.foot.Age;
import hornbook.foot.FootLimits;
import hornbook.foot.FootReadings;
import hornbook.foot.Trim;
import hornbook.foot.number.Interval;
import hornbook.foot.number.Unknown;
import hornbook.foot.wall.WallGroup;
import hornbook.foot.wall.WallSurvey;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lays out everything known of a foot as facts, and everything unknown with the path that would
 * tell.
 */
public final class FactSheets {
  /** The names that the fields of each reading end in. */
  private static final Map<ReadingKind, List<String>> NAMES = new EnumMap<>(ReadingKind.class);

  static {
    for (ReadingKind kind : ReadingKind.values()) {
      NAMES.put(
          kind,
          kind.fields().stream()
              .map(field -> field.substring(field.lastIndexOf('.') + 1))
              .toList());
    }
  }

  private final Map<Limit.Limbs, Map<Limit.Age, LimitsThatHold>> held = new LinkedHashMap<>();
  private final double grownFrom;

  /** The fields that readings rest on, by the place and name of the foot: the same every time. */
  private final Map<String, Map<ReadingKind, List<String>>> fields = new ConcurrentHashMap<>();

  /** The limits that hold for such a limb and age, and those of the computing. */
  private record LimitsThatHold(Map<String, Limit> limits, FootLimits computing) {}

  public FactSheets(Rulebook book) {
    for (Limit.Limbs limbs : Limit.Limbs.values()) {
      Map<Limit.Age, LimitsThatHold> byAge = new LinkedHashMap<>();
      for (Limit.Age age : Limit.Age.values()) {
        Map<String, Limit> limits = holding(book, limbs, age);
        byAge.put(age, new LimitsThatHold(limits, ComputingLimits.of(limits)));
      }
      held.put(limbs, byAge);
    }
    grownFrom = held.get(Limit.Limbs.FORE).get(Limit.Age.ADULT).computing().grownDays();
  }

  private static Map<String, Limit> holding(Rulebook book, Limit.Limbs limbs, Limit.Age age) {
    Map<String, Limit> holding = new LinkedHashMap<>();
    for (Limit limit : book.limits()) {
      if ((limit.limbs() == null || limit.limbs() == limbs)
          && (limit.age() == null || limit.age() == age)) {
        holding.put(limit.id(), limit);
      }
    }
    return Collections.unmodifiableMap(holding);
  }

  /** Sheets of all feet, in the order of the assessment. */
  public List<FactSheet> of(Assessment assessment) {
    List<FactSheet> sheets = new ArrayList<>();
    for (int index = 0; index < assessment.feet().size(); index++) {
      sheets.add(of(assessment, index));
    }
    return List.copyOf(sheets);
  }

  /** The sheet of the foot at this place. */
  public FactSheet of(Assessment assessment, int index) {
    return new Sheet(assessment, index).laidOut();
  }

  /** The sheet of one foot while it is being written. */
  private final class Sheet {
    private final Assessment assessment;
    private final int index;
    private final Foot foot;
    private List<hornbook.assessment.WallStretch> trimmed;
    private final String path;
    private final Map<String, List<Seen>> seen = new LinkedHashMap<>(128);
    private final Map<String, Reading> readings = new LinkedHashMap<>(128);
    private final Map<String, List<String>> unknown = new LinkedHashMap<>(128);
    private Set<String> pointless;

    Sheet(Assessment assessment, int index) {
      this.assessment = assessment;
      this.index = index;
      this.foot = assessment.feet().get(index);
      this.path = "feet[" + index + "]";
    }

    FactSheet laidOut() {
      FlatFields.of(index).each(assessment, this::add);
      boolean fore = foot.limb().fore();
      derived("limbs", fore ? "fore" : "hind", path + ".limb");
      LimitsThatHold limits = held.get(fore ? Limit.Limbs.FORE : Limit.Limbs.HIND).get(age());
      pointless = AskedWhere.pointless(assessment.horse(), foot, limits.computing());
      unknown.keySet().removeAll(pointless);
      FootReadings worked = FootReadings.of(assessment, foot, limits.computing());
      trimmed = worked.trim().off(foot.wall());
      computed(worked);
      defectMoist(worked.wall());
      otherFrog();
      otherFeet();
      ease();
      judged(limits.computing().judgedDays());
      undiagnosed();
      derived("lamenessSeen", foot.lameness() == null ? "no" : "yes", path + ".lameness");
      birthHoof(limits.computing().birthHoofDays());
      trimmable(worked.trim(), limits.computing().trim().most());
      return new FactSheet(
          Collections.unmodifiableMap(seen),
          Collections.unmodifiableMap(readings),
          cracks(),
          wall(),
          limits.limits(),
          limits.computing(),
          List.of(),
          Collections.unmodifiableMap(unknown));
    }

    /** Notes what is missing to tell which damage of the wall goes with the trim. */
    private void trimmable(Trim trim, double most) {
      Set<String> missing = new LinkedHashSet<>();
      for (int row = 0; foot.wall() != null && row < foot.wall().size(); row++) {
        hornbook.assessment.WallStretch stretch = foot.wall().get(row);
        if (trim.lacksHeight(stretch)) {
          missing.add(path + ".wall[" + row + "].height");
        }
        if (trim.lacksAmount(stretch, most)) {
          missing.add(path + ".measures.toTrim");
        }
      }
      if (!missing.isEmpty()) {
        unknown.put(FactSheet.TRIM, List.copyOf(missing));
      }
    }

    /** Rows of wall and cracks are facts of their own; of the kit rules ask for little. */
    private void add(Field field, String at, Object value) {
      String name = field.name();
      if (at.startsWith("kit.") && !Subjects.KIT.contains(at)) {
        return;
      }
      if (value == null) {
        unknown.put(name, List.of(at));
      } else if (value instanceof Word word) {
        derived(name, word.word(), at);
      } else if (value instanceof Boolean yes) {
        derived(name, yes ? "yes" : "no", at);
      } else if (value instanceof Number number) {
        readings.put(name, new Reading(name, number.doubleValue(), List.of(at)));
      } else if (value instanceof List<?> list) {
        list(name, list, at);
      }
    }

    private void list(String name, List<?> list, String at) {
      if (list.isEmpty()) {
        derived(name, "none", at);
      } else if (list.get(0) instanceof Word) {
        List<Seen> all = new ArrayList<>();
        list.forEach(word -> all.add(new Seen(name, ((Word) word).word(), at)));
        seen.put(name, List.copyOf(all));
      } else if (name.equals("cracks")) {
        derived(name, "some", at);
      }
    }

    private void derived(String what, String word, String at) {
      seen.put(what, List.of(new Seen(what, word, at)));
    }

    /** Where no vet has been told, none has found anything. */
    private void undiagnosed() {
      if (foot.diagnosis() == null && assessment.visit().vet() == VetRole.NONE) {
        unknown.remove("diagnosis");
        derived("diagnosis", "none", "visit.vet");
      }
    }

    /**
     * Whether a vet has judged each thing lately. What was not recorded has not been judged; it is
     * asked for where a vet knows of the foot.
     */
    private void judged(double most) {
      List<Judged> by = foot.care().vetJudged();
      Integer ago = foot.care().vetSawDaysAgo();
      boolean informed =
          assessment.visit().vet() != null && assessment.visit().vet() != VetRole.NONE;
      for (Judged one : Judged.values()) {
        boolean known = by != null && by.contains(one) && ago != null && ago <= most;
        derived(JudgedWords.of(one), known ? "yes" : "no", path + ".care.vetJudged");
      }
      List<String> missing = new ArrayList<>();
      if (informed && by == null) {
        missing.add(path + ".care.vetJudged");
      }
      if (informed && by != null && !by.isEmpty() && ago == null) {
        missing.add(path + ".care.vetSawDaysAgo");
      }
      if (!missing.isEmpty() && JudgedWords.something(foot)) {
        unknown.put(FactSheet.JUDGED, missing);
      }
    }

    /** Pus seen to drain would make a sudden ease less urgent. */
    private void ease() {
      boolean eased = Boolean.TRUE.equals(foot.signs().suddenEase());
      if (eased && foot.signs().drainage() == null) {
        unknown.put(FactSheet.EASE, List.of(path + ".signs.drainage"));
      }
    }

    /** A horse whose age is not given is held to be grown: the advice says so by asking. */
    private Limit.Age age() {
      Interval days = Age.days(assessment.horse());
      if (!days.known()) {
        unknown.put("age", List.of(ageField()));
        return Limit.Age.ADULT;
      }
      boolean grown = days.high() >= grownFrom;
      derived("age", grown ? "adult" : "foal", ageField());
      return grown ? Limit.Age.ADULT : Limit.Age.FOAL;
    }

    private String ageField() {
      return assessment.horse().ageDays() == null ? "horse.ageYears" : "horse.ageDays";
    }

    private void computed(FootReadings computed) {
      Map<ReadingKind, List<String>> fieldsOf =
          fields.computeIfAbsent(path + foot.limb().word(), at -> fieldsOfReadings());
      Set<String> alone = new HashSet<>();
      unknown.values().forEach(paths -> addIfAlone(paths, alone));
      for (ReadingKind kind : ReadingKind.values()) {
        Interval value = Computed.value(kind, computed);
        List<String> fields = fieldsOf.get(kind);
        if (value.known()) {
          readings.put(kind.id(), new Reading(kind.id(), value.low(), value.high(), fields));
        }
        if ((!value.known() || !value.exact()) && !settled(kind)) {
          List<String> missing = MissingInputs.paths(kind, fields, foot, path, alone);
          unknown.put(kind.id(), missing);
          addIfAlone(missing, alone);
        }
      }
    }

    /** Whether all that is missing for it makes no difference on this foot. */
    private boolean settled(ReadingKind kind) {
      List<String> names = NAMES.get(kind);
      return !pointless.isEmpty()
          && !Collections.disjoint(pointless, names)
          && Collections.disjoint(unknown.keySet(), names);
    }

    private static void addIfAlone(List<String> paths, Set<String> to) {
      if (paths.size() == 1) {
        to.add(paths.get(0));
      }
    }

    /**
     * Dry only when the whole edge is mapped and every stretch that is gone or separated was felt.
     */
    private void defectMoist(WallSurvey wall) {
      Boolean moist = wall == null ? null : wall.moistDefect();
      if (moist != null) {
        derived("defectMoist", moist ? "yes" : "no", path + ".wall");
        return;
      }
      List<String> notFelt = new ArrayList<>();
      for (int row = 0; trimmed != null && row < trimmed.size(); row++) {
        hornbook.assessment.WallStretch stretch = trimmed.get(row);
        boolean defect = stretch.state() != null && WallGroup.of(stretch.state()).defect();
        if (defect && stretch.moist() == null && !Boolean.TRUE.equals(stretch.damp())) {
          notFelt.add(path + ".wall[" + row + "].moist");
        }
      }
      unknown.put("defectMoist", notFelt.isEmpty() ? List.of(path + ".wall") : notFelt);
    }

    private Map<ReadingKind, List<String>> fieldsOfReadings() {
      Map<ReadingKind, List<String>> fields = new EnumMap<>(ReadingKind.class);
      for (ReadingKind kind : ReadingKind.values()) {
        fields.put(kind, kind.fields().stream().map(this::inFile).toList());
      }
      return fields;
    }

    /** The one word that rules ask of the other foot of the pair. */
    private void otherFrog() {
      String at = inFile("pair.signs.frogState");
      assessment
          .foot(foot.limb().pair())
          .map(other -> other.signs().frogState())
          .ifPresentOrElse(
              frog -> derived("pairFrogState", frog.word(), at),
              () -> unknown.put("pairFrogState", List.of(at)));
    }

    /** What the other feet of the horse show of heat and pulse, and whether drained pus eased. */
    private void otherFeet() {
      GatheredSigns signs = new GatheredSigns(assessment, foot, path);
      for (GatheredSigns.Word word : signs.words()) {
        if (word.word() == null) {
          unknown.put(word.what(), word.fields());
        } else {
          derived(word.what(), word.word(), word.fields().get(0));
        }
      }
    }

    /** A horse whose age is not given is held to be grown, as everywhere. */
    private void birthHoof(double until) {
      Interval days = Age.days(assessment.horse());
      boolean young = days.known() && days.high() <= until;
      derived("birthHoof", young ? "yes" : "no", ageField());
    }

    /** The path in this file of a field named from the foot in hand. */
    private String inFile(String field) {
      if (field.startsWith("foot.")) {
        return path + field.substring("foot".length());
      }
      if (field.startsWith("pair.")) {
        return "feet[" + foot.limb().pair().word() + "]" + field.substring("pair".length());
      }
      return field;
    }

    private List<Crack> cracks() {
      if (foot.cracks() == null) {
        return null;
      }
      List<Crack> cracks = new ArrayList<>();
      for (hornbook.assessment.WallCrack crack : foot.cracks()) {
        cracks.add(
            new Crack(
                word(crack.place()),
                word(crack.side()),
                word(crack.starts()),
                word(crack.depth()),
                yesNo(crack.bleeds()),
                yesNo(crack.moves()),
                yesNo(crack.seeps()),
                word(crack.runs()),
                path + ".cracks[" + cracks.size() + "]"));
      }
      return List.copyOf(cracks);
    }

    private List<Stretch> wall() {
      if (trimmed == null) {
        return null;
      }
      List<Stretch> wall = new ArrayList<>();
      for (hornbook.assessment.WallStretch stretch : trimmed) {
        wall.add(
            new Stretch(
                word(stretch.side()),
                word(stretch.state()),
                yesNo(stretch.moist()),
                yesNo(stretch.damp()),
                yesNo(stretch.mealy()),
                Unknown.or(stretch.from()),
                Unknown.or(stretch.to()),
                path + ".wall[" + wall.size() + "]"));
      }
      return List.copyOf(wall);
    }
  }

  private static String word(Word word) {
    return word == null ? null : word.word();
  }

  private static String yesNo(Boolean flag) {
    return flag == null ? null : flag ? "yes" : "no";
  }
}
