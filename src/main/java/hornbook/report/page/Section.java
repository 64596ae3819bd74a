package hornbook.report.page;

import java.util.List;

/**
 * One part of a page: a heading and what stands under it. All forms of a report are made from the
 * same sections.
 *
 * @param kept how many items, from the first, never give way to want of room
 */
public record Section(Kind kind, String heading, List<Item> items, int kept) {
  /** How the heading begins when there is one. */
  public static final String CHOSEN = "FIRST CHOICE";

  /** The parts of a page, in the order they are read. */
  public enum Kind {
    /** What a local practice changes and adds. */
    PRACTICE,
    /** The most urgent calls for the vet. */
    REFERRAL,
    /** Calls for the vet that are not for now or today. */
    REFERRAL_LATER,
    PROVISIONAL,
    /** What was begun and left incomplete. */
    INCOMPLETE,
    CHOICE,
    /** What comes first once the vet has looked. */
    AFTER_VET,
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
   * @param named what names it where there is no room for the sentence, or null for the lead
   */
  public record Item(String lead, String text, List<String> notes, String rule, String named) {
    public Item {
      notes = List.copyOf(notes);
    }

    public Item(String lead, String text, List<String> notes, String rule) {
      this(lead, text, notes, rule, null);
    }

    public static Item of(String lead, String text) {
      return new Item(lead, text, List.of(), null);
    }

    public static Item of(String text) {
      return of("", text);
    }

    /** Lead and sentence on one line, with the rule they come from. */
    public String line() {
      String both = lead.isEmpty() || text.isEmpty() ? lead + text : lead + ": " + text;
      boolean named = rule == null || both.contains(rule);
      return named ? both : both + " [" + rule + "]";
    }

    /** The same by its lead and what is added beneath. */
    public Item calling() {
      return new Item(lead, "", notes, rule);
    }

    /** The same by its name alone. */
    public Item brief() {
      return named == null ? new Item(lead, "", List.of(), rule) : of(named, "");
    }
  }

  public Section {
    items = List.copyOf(items);
  }

  /** A section whose items may all give way. */
  public Section(Kind kind, String heading, List<Item> items) {
    this(kind, heading, items, 0);
  }

  /** A section, or none where nothing stands in it. */
  public static List<Section> unlessEmpty(Kind kind, String heading, List<Item> items) {
    return items.isEmpty() ? List.of() : List.of(new Section(kind, heading, items));
  }

  /** Whether heading and text are read as one sentence. */
  public boolean inOne() {
    boolean kinds = kind == Kind.PROVISIONAL || kind == Kind.NOT_INDICATED || kind == Kind.SOURCES;
    boolean none = kind == Kind.CHOICE && items.get(0).rule() == null;
    return (kinds || none) && items.size() == 1 && items.get(0).notes().isEmpty();
  }
}
