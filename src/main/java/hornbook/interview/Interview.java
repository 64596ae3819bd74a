package hornbook.interview;

import hornbook.advice.Question;
import hornbook.advice.engine.Advisor;
import hornbook.advice.fact.FactSheet;
import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.CrossChecks;
import hornbook.foot.number.Unknown;
import hornbook.interview.InterviewQuestion.Form;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An interview about a horse's feet: always the question of greatest worth that is left, until
 * nothing left can change the advice. Knows nothing of screens and files.
 */
public final class Interview {
  private static final List<String> BASICS = List.of("horse.name", "visit.date", "horse.ageYears");
  private static final WallCrack SOME_CRACK =
      new WallCrack(null, null, null, null, null, null, null, null);

  private final Advisor advisor;
  private final TypedAnswer typed;
  private final Deque<Step> past = new ArrayDeque<>();
  private final Set<Limb> feet = EnumSet.noneOf(Limb.class);
  private InterviewState state;
  private InterviewQuestion ask;
  private List<Question> open = List.of();

  private record Step(InterviewState state, InterviewQuestion ask) {}

  /**
   * @param known what is known already; with a foot not named yet that is asked first
   * @param feet those to ask about; with none, all but those there to be compared with
   * @param today the day that {@code today} names
   */
  public Interview(
      Advisor advisor, Assessment known, Collection<Limb> feet, Units units, LocalDate today) {
    this.advisor = advisor;
    this.feet.addAll(feet);
    this.typed = new TypedAnswer(units, today);
    this.state = new InterviewState(known, Set.of(), null, null);
    if (feet.isEmpty() && named()) {
      this.feet.addAll(ComparedFeet.feet(known));
    }
    this.ask = next();
  }

  /** The question to put now; empty when nothing left can change the advice. */
  public Optional<InterviewQuestion> ask() {
    return Optional.ofNullable(ask);
  }

  /** How many things could still change the advice, this one counted. */
  public int left() {
    return open.size();
  }

  /** How many things could change the advice, with those counted that were passed over. */
  public int unanswered() {
    InterviewState afresh = new InterviewState(state.known(), Set.of(), null, null);
    return new NextQuestions(advisor, feet).open(afresh).size();
  }

  /** What is known by now; fit for a file once {@link #named}. */
  public Assessment known() {
    return state.known();
  }

  /** Whether the foot is named: without it no assessment can be. */
  public boolean named() {
    return state.known().feet().get(0).limb() != null;
  }

  /** Takes one line typed in answer to the question. */
  public AnswerOutcome take(String typedLine) {
    String line = typedLine.strip();
    switch (line) {
      case "?":
        return new AnswerOutcome.Help();
      case "stop":
        return new AnswerOutcome.Stop();
      case "<":
        return back();
      default:
        return answer(line);
    }
  }

  private AnswerOutcome back() {
    if (past.isEmpty()) {
      return new AnswerOutcome.Back(false);
    }
    Step step = past.pop();
    state = step.state();
    ask = step.ask();
    return new AnswerOutcome.Back(true);
  }

  private AnswerOutcome answer(String line) {
    InterviewState before = state;
    AnswerOutcome.Refused refused =
        switch (ask.form()) {
          case FEET -> feet(line);
          case FIELD -> field(line);
          case CRACKS -> cracks(line);
          case STRETCH_END -> stretchEnd(line);
        };
    if (refused == null) {
      refused = contradiction();
    }
    if (refused != null) {
      state = before;
      return refused;
    }
    past.push(new Step(before, ask));
    ask = next();
    return new AnswerOutcome.Taken();
  }

  private AnswerOutcome.Refused feet(String line) {
    if (TypedAnswer.nothing(line)) {
      return new AnswerOutcome.Refused("nothing", "at least one foot, with its name", null);
    }
    TypedAnswer.Result result = typed.words(List.of(Limb.values()), line);
    if (result.refused() != null) {
      return result.refused();
    }
    List<?> limbs = (List<?>) result.value();
    if (limbs.isEmpty()) {
      return new AnswerOutcome.Refused("none", "at least one foot, with its name", null);
    }
    List<Limb> named = limbs.stream().map(Limb.class::cast).toList();
    feet.clear();
    feet.addAll(named);
    List<Foot> blank = BlankAssessment.of(named).feet();
    state = state.with(AssessmentEdit.of("feet").with(state.known(), blank));
    return null;
  }

  private AnswerOutcome.Refused field(String line) {
    String path = ask.path();
    String list = InterviewPaths.list(path);
    if (TypedAnswer.nothing(line)) {
      state = state.passing(path).inList(list);
      return null;
    }
    TypedAnswer.Result result = typed.read(ask.field().kind(), line);
    if (result.refused() != null) {
      return result.refused();
    }
    state = state.with(InterviewPaths.with(state.known(), path, result.value())).inList(list);
    WallMapping mapping = state.mapping();
    if (mapping != null && result.value() instanceof WallState wall) {
      state = state.mapping(mapping.asking(WallMapping.details(wall)));
    }
    return null;
  }

  private AnswerOutcome.Refused cracks(String line) {
    int most = ((FieldRows) ask.field().kind()).most();
    if (TypedAnswer.nothing(line)) {
      state = state.passing(ask.path());
      return null;
    }
    String count = line.equalsIgnoreCase("none") ? "0" : line;
    TypedAnswer.Result result = typed.read(new WholeNumber(0, most, ""), count);
    if (result.refused() != null) {
      return result.refused();
    }
    List<WallCrack> rows = Collections.nCopies((Integer) result.value(), SOME_CRACK);
    state = state.with(InterviewPaths.with(state.known(), ask.path(), rows)).inList(ask.path());
    return null;
  }

  private AnswerOutcome.Refused stretchEnd(String line) {
    WallMapping mapping = state.mapping();
    if (TypedAnswer.nothing(line)) {
      state = sideDone(mapping);
      return null;
    }
    double to;
    if (line.equalsIgnoreCase("heel") && ask.edge() > ask.from()) {
      to = Math.rint(ask.edge());
    } else {
      TypedAnswer.Result result = typed.read(Fields.ofFoot("wall[0].to").kind(), line);
      if (result.refused() != null) {
        return result.refused();
      }
      to = (Double) result.value();
    }
    List<WallStretch> wall = state.known().feet().get(mapping.foot()).wall();
    List<WallStretch> more = WallMapping.added(wall, mapping.side(), ask.from(), to);
    state =
        state
            .with(AssessmentEdit.of(mapping.path()).with(state.known(), more))
            .mapping(mapping.asking(List.of("state")));
    return null;
  }

  private InterviewState sideDone(WallMapping mapping) {
    return mapping.side() == Side.MEDIAL
        ? state.mapping(mapping.other())
        : state.mapping(null).passing(mapping.path());
  }

  /** What the answer contradicts, if it does: as in any file. */
  private AnswerOutcome.Refused contradiction() {
    if (!named()) {
      return null;
    }
    return CrossChecks.first(state.known())
        .map(one -> new AnswerOutcome.Refused(one.found(), one.allowed(), null))
        .orElse(null);
  }

  private InterviewQuestion next() {
    if (!named()) {
      return InterviewQuestion.of(Form.FEET, "feet[0].limb", null);
    }
    for (String path : BASICS) {
      boolean told = InterviewPaths.value(state.known(), path) != null || state.passedOver(path);
      boolean otherAge = path.equals("horse.ageYears") && state.known().horse().ageDays() != null;
      if (!told && !otherAge) {
        return InterviewQuestion.of(Form.FIELD, path, null);
      }
    }
    open = new NextQuestions(advisor, feet).open(state);
    if (state.mapping() != null) {
      return inMapping();
    }
    return open.isEmpty() ? null : put(worthiest());
  }

  /** The worthiest; but what was begun of a list of rows is first brought to its end. */
  private Question worthiest() {
    return open.stream()
        .filter(question -> state.list() != null && question.field().startsWith(state.list() + "["))
        .min((one, other) -> order(one).compareTo(order(other)))
        .orElse(open.get(0));
  }

  private String order(Question question) {
    return InterviewPaths.order(state.known(), question.field());
  }

  private InterviewQuestion put(Question question) {
    if (!(Fields.at(question.field()).kind() instanceof FieldRows)) {
      return InterviewQuestion.of(Form.FIELD, question.field(), question);
    }
    if (question.field().endsWith(".cracks")) {
      return InterviewQuestion.of(Form.CRACKS, question.field(), question);
    }
    int foot = Integer.parseInt(question.field().replaceAll("[^0-9]", ""));
    FactSheet sheet = advisor.sheet(state.known(), foot);
    state = state.mapping(WallMapping.of(state.known(), foot, sheet));
    return inMapping();
  }

  private InterviewQuestion inMapping() {
    WallMapping mapping = state.mapping();
    Question matter =
        open.stream()
            .filter(one -> one.field().startsWith(mapping.path()))
            .findFirst()
            .orElse(null);
    if (!mapping.left().isEmpty()) {
      int row = state.known().feet().get(mapping.foot()).wall().size() - 1;
      String path = mapping.path() + "[" + row + "]." + mapping.left().get(0);
      state = state.mapping(mapping.asking(mapping.left().subList(1, mapping.left().size())));
      return new InterviewQuestion(
          Form.FIELD, path, matter, mapping.side(), Unknown.NUMBER, Unknown.NUMBER);
    }
    if (mapping.atHeel(state.known())) {
      state = sideDone(mapping);
      return next();
    }
    double from = mapping.from(state.known());
    return new InterviewQuestion(
        Form.STRETCH_END, mapping.path(), matter, mapping.side(), from, mapping.edge());
  }
}
