package hornbook.plan.time;

import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.Technique;
import java.util.ArrayList;
import java.util.List;

/** How long until the next visit: the shortest of what the foot and the technique allow. */
final class Intervals {
  private final SheetDraft draft;

  Intervals(SheetDraft draft) {
    this.draft = draft;
  }

  Figure shortest(boolean behind) {
    List<Figure> all = new ArrayList<>();
    all.add(draft.limit("aftercare.interval.usual"));
    if (draft.technique().firstAid()) {
      all.add(firstAid());
    }
    if (Boolean.TRUE.equals(draft.assessed().brushing())) {
      all.add(draft.limit("aftercare.interval.brushing"));
    }
    if (draft.found("contracted-heels")) {
      all.add(draft.limit("aftercare.interval.contracted"));
    }
    if (draft.found("active-white-line-disease")) {
      all.add(draft.limit("open.recheck"));
    }
    if (draft.technique() == Technique.LEAVE_OPEN) {
      all.add(draft.limit("open.recheck"));
    }
    if (draft.technique() == Technique.CAST_WRAP) {
      all.add(draft.limit("aftercare.wrap.longest"));
    }
    if (behind) {
      all.add(draft.limit("waived.interval"));
    }
    Figure shortest = all.get(0);
    for (Figure one : all) {
      shortest = one.value() < shortest.value() ? one : shortest;
    }
    return shortest;
  }

  private Figure firstAid() {
    return draft.limit(
        switch (draft.technique()) {
          case COME_BACK -> "first-aid.come-back";
          case DRAW_NAIL -> "first-aid.again";
          default -> "first-aid.dressing-look";
        });
  }
}
