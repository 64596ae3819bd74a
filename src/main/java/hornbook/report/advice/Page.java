package hornbook.report.advice;

import hornbook.advice.FootAdvice;
import hornbook.report.page.Section;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Incomplete;
import hornbook.report.words.PageContext;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The sections of the advice on one foot, in the order they are read. */
record Page(String foot, List<Section> sections) {
  private static final String INCOMPLETE = "INCOMPLETE";

  /**
   * The usual page: the vet, today's work, what waits for the vet, what is ruled out, what decided,
   * what to check next.
   */
  private static final List<Kind> USUAL =
      List.of(
          Kind.REFERRAL,
          Kind.REFERRAL_LATER,
          Kind.PROVISIONAL,
          Kind.INCOMPLETE,
          Kind.CHOICE,
          Kind.AFTER_VET,
          Kind.FOUND,
          Kind.SUPPORT,
          Kind.CAUTIONS,
          Kind.WORKABLE,
          Kind.WITH_VET,
          Kind.RULED_OUT,
          Kind.MEASURES,
          Kind.NEXT,
          Kind.SOURCES);

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
    if (told.detail() == Detail.USUAL) {
      sections.removeIf(section -> !USUAL.contains(section.kind()));
      sections.sort(Comparator.comparing(section -> USUAL.indexOf(section.kind())));
    }
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
