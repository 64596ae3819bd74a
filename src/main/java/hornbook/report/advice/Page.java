package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.report.page.Section;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Incomplete;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/** The sections of the advice on one foot, in the order they are read. */
record Page(String foot, List<Section> sections) {
  private static final String INCOMPLETE = "INCOMPLETE";

  static Page of(PageContext told, FootAdvice foot) {
    List<Section> sections = new ArrayList<>();
    sections.addAll(new ReferralPart(told).of(foot));
    sections.addAll(incomplete(told, foot));
    sections.addAll(new ChoicePart(told).of(foot));
    if (told.detail() == Detail.BRIEF) {
      return new Page(FieldNames.of(foot.limb()), List.copyOf(sections));
    }
    sections.addAll(new FoundPart(told).of(foot));
    sections.addAll(new MeasurePart(told).of(foot));
    sections.addAll(new SupportPart(told).of(foot));
    sections.addAll(new NextPart(told).of(foot));
    if (told.detail() == Detail.FULL) {
      sections.addAll(new ReasonPart(told).of(foot));
    }
    sections.addAll(new SourcePart(told).of(foot));
    return new Page(FieldNames.of(foot.limb()), List.copyOf(sections));
  }

  /** What was begun and is not whole stands above the verdict it could have changed. */
  static List<Section> incomplete(PageContext told, FootAdvice foot) {
    List<Section.Item> items =
        Incomplete.of(told.advice(), foot).stream()
            .map(one -> Section.Item.of(Sentence.capital(one.says())))
            .toList();
    return Section.unlessEmpty(Section.Kind.INCOMPLETE, INCOMPLETE, items);
  }
}
