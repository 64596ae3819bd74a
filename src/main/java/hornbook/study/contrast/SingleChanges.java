package hornbook.study.contrast;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.CrossChecks;
import hornbook.assessment.word.Word;
import hornbook.study.measure.Graduation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongFunction;

/**
 * Finds the steps away from what was noted at which some condition of the rules turns. Numbers are
 * tried mark by mark near what was noted, further off in growing strides, the turn between two of
 * which is then halved in on; to the end of what the field and the rest of the horse allow.
 */
final class SingleChanges {
  private static final int MARK_BY_MARK = 20;
  private static final double STRIDE = 1.15;

  private final WhatIf foot;
  private final Units units;

  SingleChanges(WhatIf foot, Units units) {
    this.foot = foot;
    this.units = units;
  }

  /** The steps of one thing, the nearest first; each meets other conditions than those before. */
  List<SingleChange> of(Observation what) {
    List<SingleChange> steps = new ArrayList<>();
    if (what.field().kind() instanceof Amount amount) {
      Graduation marks = what.tool().marks(amount.dimension(), units);
      double noted = (Double) what.noted();
      for (boolean up : new boolean[] {true, false}) {
        long last = marks.within(up ? amount.mostKept() : amount.leastKept(), up);
        steps.addAll(new Line(what, marks::kept, marks.beyond(noted, up), last).steps());
      }
    } else if (what.field().kind() instanceof WholeNumber whole) {
      long noted = (Integer) what.noted();
      LongFunction<Object> value = mark -> (int) mark;
      steps.addAll(new Line(what, value, noted + 1, whole.most()).steps());
      steps.addAll(new Line(what, value, noted - 1, whole.least()).steps());
    } else {
      for (Object value : otherWords(what)) {
        add(steps, step(what, value));
      }
    }
    steps.sort(Comparator.comparing(SingleChange::errors));
    return steps;
  }

  private SingleChange step(Observation what, Object value) {
    BitSet met = foot.met(what.with(foot.noted(), value));
    return new SingleChange(what, value, what.errors(value), met);
  }

  /** Adds a step that turns something, other than those before. */
  private void add(List<SingleChange> steps, SingleChange step) {
    boolean known = steps.stream().anyMatch(one -> one.met().equals(step.met()));
    boolean adds = step.ofTheWall() && !step.what().number();
    if (!known && (adds || !step.met().equals(foot.met()))) {
      steps.add(step);
    }
  }

  /** In the order of the table of fields, where what is usual comes first. */
  private static List<Object> otherWords(Observation what) {
    if (what.field().kind() instanceof Flag) {
      return List.of(!(Boolean) what.noted());
    }
    List<Object> others = new ArrayList<>();
    if (what.field().kind() instanceof OneWord one) {
      others.addAll(one.options());
      others.remove(what.noted());
      return others;
    }
    List<?> noted = (List<?>) what.noted();
    for (Word word : ((WordList) what.field().kind()).each().options()) {
      List<Object> list = new ArrayList<>(noted);
      if (!list.remove(word)) {
        list.add(word);
      }
      others.add(List.copyOf(list));
    }
    return others;
  }

  /** The marks of one number to one side of what was noted. */
  private final class Line {
    private final Observation what;
    private final LongFunction<Object> value;
    private final long first;
    private final int way;
    private final long last;
    private final List<SingleChange> steps = new ArrayList<>();

    /**
     * @param first the mark next to what was noted
     * @param last the last mark the field takes
     */
    Line(Observation what, LongFunction<Object> value, long first, long last) {
      this.what = what;
      this.value = value;
      this.first = first;
      this.way = above(value.apply(first)) ? 1 : -1;
      this.last = Math.max(-1, (last - first) * way);
    }

    private boolean above(Object value) {
      return ((Number) value).doubleValue() > ((Number) what.noted()).doubleValue();
    }

    /** In marks counted from the first. */
    List<SingleChange> steps() {
      long end = possible();
      BitSet before = foot.met();
      long at = 0;
      long tried = -1;
      while (at <= end) {
        SingleChange step = step(at);
        if (!step.met().equals(before) && at > tried + 1) {
          add(steps, turnBetween(tried, at, before));
        }
        add(steps, step);
        before = step.met();
        tried = at;
        long next = at < MARK_BY_MARK ? at + 1 : (long) Math.ceil(at * STRIDE);
        at = at < end ? Math.min(end, next) : end + 1;
      }
      return steps;
    }

    private SingleChange step(long mark) {
      return SingleChanges.this.step(what, value.apply(first + way * mark));
    }

    /** The first mark that meets other conditions, between one that does not and one that does. */
    private SingleChange turnBetween(long same, long other, BitSet before) {
      long low = same;
      long high = other;
      while (high - low > 1) {
        long middle = (low + high) / 2;
        if (step(middle).met().equals(before)) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return step(high);
    }

    /** The last mark that does not contradict the rest of what is known. */
    private long possible() {
      long low = -1;
      long high = last + 1;
      while (high - low > 1) {
        long middle = (low + high) / 2;
        Object there = value.apply(first + way * middle);
        if (CrossChecks.hold(what.with(foot.noted(), there))) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return low;
    }
  }
}
