package hornbook.assessment.tree;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.tree.LocatedValue.Token;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;

/** Held to the core schema as the YAML library has it. */
class PlainScalarTest {
  private static final CoreScalarResolver CORE = new CoreScalarResolver(false);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "~",
        "null",
        "Null",
        "NULL",
        "nUll",
        "true",
        "True",
        "TRUE",
        "tRue",
        "false",
        "yes",
        "no",
        "on",
        "12",
        "-12",
        "+12",
        "007",
        "1.5",
        "1.",
        ".5",
        "-.5",
        ".",
        "1e3",
        "1E-3",
        "1e",
        "e3",
        "1.5e+7",
        "12 mm",
        "2026-03-14",
        "1_000",
        "--1",
        "none",
        "1.2.3"
      })
  void agreesOnWhatPeopleWrite(String text) {
    assertThat(PlainScalar.token(text)).isEqualTo(core(text));
  }

  @Property(tries = 5000)
  void agreesOnAnythingLikeANumber(
      @ForAll @Chars({'0', '1', '9', '.', 'e', 'E', '+', '-'}) @StringLength(max = 8) String text) {
    assertThat(PlainScalar.token(text)).as("\"%s\"", text).isEqualTo(core(text));
  }

  private static Token core(String text) {
    Tag tag = CORE.resolve(text, true);
    if (tag.equals(Tag.NULL)) {
      return Token.NOTHING;
    }
    if (tag.equals(Tag.BOOL)) {
      return Token.FLAG;
    }
    return tag.equals(Tag.INT) || tag.equals(Tag.FLOAT) ? Token.NUMBER : Token.TEXT;
  }
}
