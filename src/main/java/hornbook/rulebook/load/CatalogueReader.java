package hornbook.rulebook.load;

import hornbook.rulebook.Condition;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.RuleText;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Shown;
import hornbook.rulebook.Source;
import hornbook.rulebook.Topic;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Extent;
import hornbook.rulebook.reserve.Move;
import hornbook.rulebook.reserve.Reserves;
import hornbook.rulebook.reserve.Until;
import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads the compact file of a rule base. Written by hand because it is read at every start: the
 * platform's own serialization of the same records took half a second.
 */
public final class CatalogueReader {
  /**
   * Changes with the form of the file, so that a file of another program version is not misread.
   */
  public static final int FORM = 0x484F524E + 9;

  static final int LIMIT = 0;
  static final int READING = 1;
  static final int SEEN = 2;
  static final int CRACK = 3;
  static final int STRETCH = 4;
  static final int FINDING = 5;

  static final int FINDS = 0;
  static final int REFERS = 1;
  static final int REASONS = 2;
  static final int CAUTIONS = 3;

  private final ByteBuffer in;
  private String[] texts;

  private CatalogueReader(byte[] all) {
    in = ByteBuffer.wrap(all);
  }

  /**
   * Reads to the end.
   *
   * @throws IOException also when the file is of another form or not whole
   */
  public static Rulebook read(InputStream from) throws IOException {
    try {
      return new CatalogueReader(from.readAllBytes()).book();
    } catch (BufferUnderflowException | IndexOutOfBoundsException damaged) {
      throw new IOException("not a whole rule base", damaged);
    }
  }

  /**
   * Every text once, with the number of its bytes. A text of letters with one byte each is made
   * without a look at them.
   */
  private static String[] texts(ByteBuffer in) {
    String[] texts = new String[in.getInt()];
    for (int at = 0; at < texts.length; at++) {
      int length = in.getInt();
      Charset letters = length < 0 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
      int bytes = length < 0 ? -length : length;
      texts[at] = new String(in.array(), in.position(), bytes, letters);
      in.position(in.position() + bytes);
    }
    return texts;
  }

  private Rulebook book() throws IOException {
    if (in.getInt() != FORM) {
      throw new IOException("another form of rule base");
    }
    texts = texts(in);
    return new Rulebook(
        text(),
        text(),
        each(() -> new Topic(text(), text(), text())),
        each(this::named),
        each(this::named),
        byKey(each(this::source), Source::key),
        byKey(each(this::finding), FindingKind::id),
        each(this::limit),
        byKey(each(this::rule), RuleEntry::id),
        byKey(each(this::instruction), Instruction::id),
        each(() -> new GlossaryTerm(text(), text(), each(this::text))),
        null);
  }

  private NamedOption named() throws IOException {
    return new NamedOption(text(), text(), flag(), flag());
  }

  private Source source() throws IOException {
    String key = text();
    String author = text();
    String title = text();
    String where = text();
    return new Source(key, author, title, in.getInt(), where);
  }

  private FindingKind finding() throws IOException {
    String id = text();
    String label = text();
    String topic = text();
    return new FindingKind(id, label, flag(), each(this::text), topic);
  }

  private Limit limit() throws IOException {
    String id = text();
    String label = text();
    String unit = text();
    String source = text();
    String locator = text();
    double value = in.getDouble();
    double step = in.getDouble();
    boolean inclusive = flag();
    Limit.Direction direction = constant(Limit.Direction.values());
    Limit.Limbs limbs = constant(Limit.Limbs.values());
    Limit.Age age = constant(Limit.Age.values());
    Basis basis = constant(Basis.values());
    Limit.Safer safer = constant(Limit.Safer.values());
    return new Limit(
        id,
        label,
        value,
        unit,
        direction,
        inclusive,
        limbs,
        age,
        source,
        locator,
        basis,
        safer,
        step,
        each(this::dispute),
        flag());
  }

  private Limit.Dispute dispute() throws IOException {
    String source = text();
    String says = text();
    Double value = flag() ? (Double) in.getDouble() : null;
    return new Limit.Dispute(value, source, says);
  }

  private RuleEntry rule() throws IOException {
    String id = text();
    String title = text();
    String topic = text();
    String since = text();
    String why = text();
    String silent = text();
    String file = text();
    int line = in.getInt();
    Basis basis = constant(Basis.values());
    List<Condition> conditions = each(this::condition);
    RuleConclusion outcome = outcome();
    RuleText text =
        new RuleText(
            text(),
            text(),
            each(this::text),
            each(this::text),
            each(this::text),
            reserves(),
            each(this::text),
            each(this::text),
            constant(Shown.values()));
    return new RuleEntry(
        id, title, topic, basis, since, why, silent, conditions, outcome, text, file, line);
  }

  private Reserves reserves() throws IOException {
    if (!flag()) {
      return Reserves.NOTHING;
    }
    List<String> techniques = each(this::text);
    List<String> supports = each(this::text);
    List<Cut> cuts = each(() -> constant(Cut.values()));
    List<Move> moves = each(() -> constant(Move.values()));
    Extent extent = constant(Extent.values());
    Until until = constant(Until.values());
    int days = in.getInt();
    return new Reserves(
        techniques,
        supports,
        Set.copyOf(cuts),
        Set.copyOf(moves),
        extent,
        until,
        until == Until.DAYS ? (Integer) days : null);
  }

  private Instruction instruction() throws IOException {
    return new Instruction(
        text(),
        text(),
        each(this::text),
        constant(Basis.values()),
        Set.copyOf(each(() -> constant(Cut.values()))),
        Set.copyOf(each(() -> constant(Move.values()))));
  }

  private Condition condition() throws IOException {
    int kind = in.get();
    String variable = text();
    return switch (kind) {
      case LIMIT -> new Condition.OfLimit(variable, text());
      case READING -> {
        String what = text();
        String limit = text();
        yield new Condition.OfReading(variable, what, flag(), limit);
      }
      case SEEN -> new Condition.OfSeen(variable, text(), test());
      case CRACK -> new Condition.OfCrack(variable, tests());
      case STRETCH -> new Condition.OfStretch(variable, tests());
      case FINDING -> new Condition.OfFinding(variable, text());
      default -> throw new IOException("no such condition: " + kind);
    };
  }

  private RuleConclusion outcome() throws IOException {
    int kind = in.get();
    return switch (kind) {
      case FINDS -> new RuleConclusion.Finds(text(), each(this::text));
      case REFERS ->
          new RuleConclusion.Refers(constant(Urgency.values()), text(), each(this::text));
      case REASONS ->
          new RuleConclusion.Reasons(
              constant(Bearing.values()), each(this::text), each(this::text));
      case CAUTIONS -> new RuleConclusion.Cautions(text(), each(this::text));
      default -> throw new IOException("no such conclusion: " + kind);
    };
  }

  private Map<String, WordTest> tests() throws IOException {
    Map<String, WordTest> tests = new LinkedHashMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      tests.put(text(), test());
    }
    return Collections.unmodifiableMap(tests);
  }

  private WordTest test() throws IOException {
    return new WordTest(flag(), each(this::text));
  }

  /** What reads one of many. */
  private interface One<T> {
    T read() throws IOException;
  }

  private <T> List<T> each(One<T> one) throws IOException {
    int size = in.getInt();
    List<T> all = new ArrayList<>(size);
    for (int at = 0; at < size; at++) {
      all.add(one.read());
    }
    return Collections.unmodifiableList(all);
  }

  private static <T> Map<String, T> byKey(List<T> all, Function<T, String> key) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(one -> map.put(key.apply(one), one));
    return Collections.unmodifiableMap(map);
  }

  /** The constant at the ordinal that follows, or null. */
  private <E> E constant(E[] constants) throws IOException {
    int ordinal = in.get();
    return ordinal < 0 ? null : constants[ordinal];
  }

  private boolean flag() {
    return in.get() != 0;
  }

  private String text() {
    int at = in.getInt();
    return at < 0 ? null : texts[at];
  }
}
