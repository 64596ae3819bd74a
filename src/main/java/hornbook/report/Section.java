package hornbook.report;

import java.util.List;

/**
 * One part of a page: a heading and what stands under it. All forms of a report are made from the
 * same sections.
 */
record Section(Kind kind, String heading, List<Item> items) {
  /** The parts of a page, in the order they are read. */
  enum Kind {
    /** What a local practice changes and adds. */
    PRACTICE,
    /** The most urgent calls for the vet. */
    REFERRAL,
    REFERRAL_LATER,
    PROVISIONAL,
    /** What was begun and left incomplete. */
    INCOMPLETE,
    CHOICE,
    WORKABLE,
    WITH_VET,
    RULED_OUT,
    NOT_INDICATED,
    FOUND,
    MEASURES,
    SUPPORT,
    CAUTIONS,
    NEXT,
    REASONS,
    SOURCES
  }

  /**
   * One thing said.
   *
   * @param lead what it is about, or an empty text
   * @param text the sentence, or an empty text
   * @param notes what is added beneath
   * @param rule the rule it comes from, or null
   */
  record Item(String lead, String text, List<String> notes, String rule) {
    Item {
      notes = List.copyOf(notes);
    }

    static Item of(String lead, String text) {
      return new Item(lead, text, List.of(), null);
    }

    static Item of(String text) {
      return of("", text);
    }

    /** Lead and sentence on one line, with the rule they come from. */
    String line() {
      String both = lead.isEmpty() || text.isEmpty() ? lead + text : lead + ": " + text;
      boolean named = rule == null || both.contains(rule);
      return named ? both : both + " [" + rule + "]";
    }

    /** The same by its lead alone. */
    Item brief() {
      return new Item(lead, "", List.of(), rule);
    }
  }

  Section {
    items = List.copyOf(items);
  }

  /** A section, or none where nothing stands in it. */
  static List<Section> unlessEmpty(Kind kind, String heading, List<Item> items) {
    return items.isEmpty() ? List.of() : List.of(new Section(kind, heading, items));
  }

  /** Whether heading and text are read as one sentence. */
  boolean inOne() {
    boolean kinds = kind == Kind.PROVISIONAL || kind == Kind.NOT_INDICATED;
    boolean none = kind == Kind.CHOICE && items.get(0).rule() == null;
    return (kinds || none) && items.size() == 1 && items.get(0).notes().isEmpty();
  }
}
