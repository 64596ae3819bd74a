package hornbook.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Things are found by id, by the name on the page, and by words of either. */
class NameSearchTest {
  private static final List<NamedOption> ALL =
      List.of(
          new NamedOption("nail-on", "a nailed shoe"),
          new NamedOption("nail-on-adapted", "a shoe nailed only where the wall is sound"),
          new NamedOption("glue-on", "a glued shoe"),
          new NamedOption("cast-wrap", "casting tape round the wall"),
          new NamedOption("prosthetic-wall", "a wall rebuilt of bonded composite"));

  @ParameterizedTest
  @CsvSource({
    "glue-on, glue-on",
    "Glue On, glue-on",
    "GLUE_ON, glue-on",
    "a glued shoe, glue-on",
    "Glued shoes, glue-on",
    "the nailed shoe, nail-on",
    "a shoe nailed only where the wall is sound, nail-on-adapted",
    "adapted, nail-on-adapted",
    "composite, prosthetic-wall",
    "casting, cast-wrap",
    "wrap, cast-wrap",
    "shoe, nail-on nail-on-adapted glue-on",
    "wall, nail-on-adapted cast-wrap prosthetic-wall",
    "nailed, nail-on nail-on-adapted",
    "brass, ''",
    "on shoe, ''",
    "'', ''",
    "a, ''"
  })
  void findsWhatIsMeant(String text, String ids) {
    List<String> found = NameSearch.find(text, ALL).stream().map(NamedOption::id).toList();
    assertThat(found).isEqualTo(ids.isEmpty() ? List.of() : List.of(ids.split(" ")));
  }
}
