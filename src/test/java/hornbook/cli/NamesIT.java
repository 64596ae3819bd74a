package hornbook.cli;

import static hornbook.cli.Program.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a page calls a thing is taken wherever its id is. */
class NamesIT {
  private static final String TORN = exercise("showjumper-torn-side");

  static Stream<Arguments> named() {
    return Stream.of(
        same("plan FILE --technique", "glued shoe", "glue-on"),
        same("plan FILE --technique glue-on --support", "rolled toes", "rolled-toe"),
        same("contrast FILE --most 1 --to", "a nailed shoe", "nail-on"),
        same("why FILE", "composite", "prosthetic-wall"),
        same("why-not FILE", "a nailed shoe", "nail-on"),
        same("rules show", "a glued shoe", "glue-on"));
  }

  private static Arguments same(String command, String name, String id) {
    return Arguments.of(command.replace("FILE", TORN), name, id);
  }

  @ParameterizedTest
  @MethodSource("named")
  void a_name_does_what_the_id_does(String command, String name, String id) {
    Program.Run byName = run(command, name);
    assertThat(byName.out()).isNotBlank().isEqualTo(run(command, id).out());
  }

  private static Program.Run run(String command, String last) {
    String[] words =
        Stream.concat(Stream.of(command.split(" ")), Stream.of(last)).toArray(String[]::new);
    return Program.run(words).done();
  }

  @Test
  void the_book_keeps_the_id(@TempDir Path folder) {
    String book = folder.resolve("book").toString();
    Program.run("record", "add", TORN, "--chose", "near fore=Glued shoe", "--book", book).ended(0);
    assertThat(
            Program.run("record", "export", "1", "--format", "json", "--book", book)
                .json()
                .at("/chose"))
        .hasToString("{\"left-fore\":\"glue-on\"}");
  }

  @Test
  void a_name_that_fits_several_gets_the_list() {
    assertThat(Program.run("plan", TORN, "--technique", "shoe").refused(2).err())
        .contains("\"shoe\" could be any of", "nail-on  ", "a glued shoe")
        .doesNotContain("cast-wrap");
    assertThat(Program.run("why", TORN, "shoe").refused(2).err())
        .contains("could be any of", "technique:nail-on  a nailed shoe", "support:");
  }

  @Test
  void a_name_that_fits_none_gets_ids_and_names() {
    assertThat(Program.run("record", "add", TORN, "--chose", "gluon").refused(2).err())
        .contains("there is no technique \"gluon\"", "nearest: glue-on", "none", "nothing put on");
    assertThat(Program.run("plan", TORN).refused(2).err())
        .contains("--technique is missing", "glue-on", "a glued shoe");
  }
}
