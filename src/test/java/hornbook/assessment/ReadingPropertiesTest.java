package hornbook.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.field.Fields;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Member;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.YamlTree;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever the bytes: an assessment with everything that stands in them, or faults. */
class ReadingPropertiesTest {
  private static final String JSON = json(tree(Read.full()), new Random(1));

  @Property(tries = 2000)
  void noBytesThrow(@ForAll @Size(max = 400) byte[] bytes) {
    wholeOrFaulty(bytes);
  }

  @Property(tries = 2000)
  void noTextMadeOfPiecesThrows(@ForAll("pieces") String text) {
    wholeOrFaulty(text.getBytes(StandardCharsets.UTF_8));
    wholeOrFaulty(("{" + text).getBytes(StandardCharsets.UTF_8));
  }

  @Property(tries = 3000)
  void noChangeOfAGoodFileThrowsOrIsHalfRead(
      @ForAll boolean asJson,
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 1_000_000) Integer> changes,
      @ForAll @Size(min = 1, max = 6) byte[] bytes) {
    byte[] file = (asJson ? JSON : Read.full()).getBytes(StandardCharsets.UTF_8);
    for (int change : changes) {
      file = changed(file, change, bytes);
    }
    wholeOrFaulty(file);
  }

  @Property(tries = 300)
  void noCutOfAJsonFileIsRead(@ForAll @IntRange(min = 0, max = 2000) int length) {
    String cut = JSON.substring(0, Math.min(length, JSON.stripTrailing().length() - 1));
    assertThat(Read.result(cut)).isInstanceOf(ReadResult.Faulty.class);
  }

  @Property(tries = 300)
  void theOrderOfFieldsDoesNotMatterNorWhetherItIsYamlOrJson(
      @ForAll("assessments") Assessment any, @ForAll long seed) {
    LocatedValue tree = tree(BlankAssessment.write(any, Units.MM, null));
    Assessment written = AssessmentEdit.of("units").with(any, Units.MM);
    assertThat(Read.good(json(tree, new Random(seed)))).isEqualTo(written);
  }

  @Property(tries = 100)
  void faultsAreTheSameWhereverTheFieldsStand(@ForAll long seed) {
    String broken = Read.full().replace("work: racing", "work: hunting").replace("46 deg", "46 kg");
    List<String> paths = paths(broken);
    assertThat(paths).containsExactly("feet[0].measures.toeAngle", "horse.work");
    assertThat(paths(json(tree(broken), new Random(seed)))).isEqualTo(paths);
  }

  private static List<String> paths(String text) {
    ReadResult.Faulty faulty = (ReadResult.Faulty) Read.result(text);
    return faulty.faults().stream().map(Fault::path).sorted().toList();
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(
            "format",
            "hornbook-assessment/1",
            "feet",
            "limb",
            "left-fore",
            "wall",
            "horse",
            ": ",
            ":",
            "\n",
            "\n  ",
            "\n- ",
            "- ",
            "[",
            "]",
            "{",
            "}",
            ", ",
            "\"",
            "'",
            "&a ",
            "*a",
            "!x ",
            "!!str ",
            "? ",
            "|\n",
            ">",
            "#",
            "%",
            "@",
            "---\n",
            "...\n",
            "\t",
            "~",
            "null",
            "<<",
            "12 mm",
            "1e999",
            "-",
            "0",
            "\\u0000",
            "\u0085",
            "\ufeff",
            "\ud83d\udc0e")
        .list()
        .ofMaxSize(25)
        .map(pieces -> String.join("", pieces));
  }

  private static byte[] changed(byte[] file, int change, byte[] with) {
    int at = file.length == 0 ? 0 : change / 4 % file.length;
    int end = Math.min(file.length, at + with.length);
    byte[] before = Arrays.copyOf(file, at);
    byte[] behind = Arrays.copyOfRange(file, end, file.length);
    return switch (change % 4) {
      case 0 -> joined(before, behind);
      case 1 -> joined(before, with, Arrays.copyOfRange(file, at, file.length));
      case 2 -> joined(before, Arrays.copyOf(with, end - at), behind);
      default -> joined(Arrays.copyOf(file, end), Arrays.copyOfRange(file, at, file.length));
    };
  }

  private static byte[] joined(byte[]... parts) {
    java.io.ByteArrayOutputStream joined = new java.io.ByteArrayOutputStream();
    for (byte[] part : parts) {
      joined.writeBytes(part);
    }
    return joined.toByteArray();
  }

  private static void wholeOrFaulty(byte[] bytes) {
    ReadResult result = AssessmentReader.read(bytes, "any", List.of());
    if (result instanceof ReadResult.Good good) {
      long read = Fields.values(good.assessment()).filter(field -> field.value() != null).count();
      assertThat(read).as(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(known(good.tree()));
    } else {
      List<Fault> faults = ((ReadResult.Faulty) result).faults();
      assertThat(faults).isNotEmpty().isSortedAccordingTo((a, b) -> a.place().compareTo(b.place()));
      for (Fault fault : faults) {
        assertThat(fault.line()).isPositive();
        assertThat(fault.column()).isPositive();
        assertThat(fault.found()).isNotBlank();
        assertThat(fault.allowed()).isNotBlank();
        assertThat(fault.message()).doesNotContain("Exception", "org.", "com.", "java.");
      }
    }
  }

  /** How many fields of a checked tree say something, the format and the list of feet apart. */
  private static long known(LocatedValue tree) {
    long known = 0;
    for (Map.Entry<String, Member> member : ((Group) tree).members().entrySet()) {
      LocatedValue value = member.getValue().value();
      if (value instanceof Group) {
        known += known(value);
      } else if (value instanceof Items list) {
        boolean says = !member.getKey().equals("feet");
        boolean unmapped = member.getKey().equals("wall") && list.items().isEmpty();
        known += says && !unmapped ? 1 : 0;
        for (LocatedValue item : list.items()) {
          known += item instanceof Group ? known(item) : 0;
        }
      } else if (value instanceof Scalar scalar && !member.getKey().equals("format")) {
        known += scalar.unknown() || scalar.text().isBlank() ? 0 : 1;
      }
    }
    return known;
  }

  private static LocatedValue tree(String yaml) {
    return YamlTree.read(yaml, "tree", "a tree", new ArrayList<>());
  }

  private static String json(LocatedValue value, Random order) {
    if (value instanceof Items list) {
      List<String> items = list.items().stream().map(item -> json(item, order)).toList();
      return "[" + String.join(", ", items) + "]";
    }
    if (value instanceof Group group) {
      List<String> members = new ArrayList<>();
      group.members().forEach((key, member) -> members.add(member(key, member, order)));
      Collections.shuffle(members, order);
      return "{" + String.join(",\n", members) + "}";
    }
    Scalar scalar = (Scalar) value;
    if (scalar.token() == Token.NOTHING) {
      return "null";
    }
    return scalar.token() == Token.TEXT ? quoted(scalar.text()) : scalar.text();
  }

  private static String member(String key, Member member, Random order) {
    return quoted(key) + ": " + json(member.value(), order);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
