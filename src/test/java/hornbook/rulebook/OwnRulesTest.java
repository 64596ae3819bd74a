package hornbook.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.compile.FolderRules;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import hornbook.rulebook.start.RuleStarter;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.OwnCases;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own rules are added to the shipped ones without a copy, and read once. */
class OwnRulesTest {
  @TempDir private Path folder;
  @TempDir private Path cache;

  @BeforeEach
  void begin() throws IOException {
    start("our-yard", null);
  }

  private void start(String topic, String title) throws IOException {
    for (Map.Entry<String, String> one :
        new RuleStarter(folder, topic, title, null, null)
            .files(LocalDate.of(2026, 3, 14))
            .entrySet()) {
      write(one.getKey(), one.getValue());
    }
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void replace(String name, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(name));
    assertThat(text).contains(from);
    write(name, text.replace(from, to));
  }

  private List<String> faults() throws IOException {
    return RulebookReader.inspect(folder).faults().stream().map(RuleFault::text).toList();
  }

  @Test
  void a_new_rule_and_its_two_cases_are_in_order_at_once() throws Exception {
    start("our-yard", "Feet left \"too\" long");
    start("college", "Pupils look twice");
    LoadedRules loaded = FolderRules.load(folder);
    OwnCases run = OwnCases.run(loaded, Shipped.BOOK, folder.resolve("cases"));
    assertThat(run.faults()).isEmpty();
    assertThat(run.rules().stream().map(RuleEntry::id)).containsExactly("C001", "Y001", "Y002");
    assertThat(run.cases()).hasSize(3);
    assertThat(loaded.book().rules())
        .containsAllEntriesOf(Shipped.BOOK.rules())
        .hasSize(Shipped.BOOK.rules().size() + 3);
    assertThat(loaded.book().version()).isEqualTo(Shipped.BOOK.version() + " with Own rules 0.1.0");
    assertThat(loaded.book().digest()).isNotEqualTo(Shipped.BOOK.digest());
  }

  @Test
  void own_rules_rest_on_findings_and_limits_of_the_shipped_ones() throws Exception {
    replace(
        "our-yard/y001.drl",
        "end\n",
        """
        end

        // Ours are sent to the bench first.
        // Silent when the wall holds its nails.
        rule "Send it to the bench"
            @id(Y002) @topic(our-yard) @basis(practice) @since(0.1.0)
        when
            $least : Limit( id == "nails.branch.least" )
            $sites : Reading( what == "nail-sites-weaker-branch", misses( $least ) )
            $short : Finding( what == "not-nailable" )
        then
            insert( Caution.about( "bench", $short, $sites, $least ) );
        end
        """);
    write(
        "our-yard/y001.yaml",
        Files.readString(folder.resolve("our-yard/y001.yaml"))
            + "Y002:\n  says: \"{sites} sites, {least} wanted: {short}.\"\n  sources: [practice]\n");
    assertThat(faults()).isEmpty();
    Advisor advisor = new Advisor(FolderRules.load(folder));
    Assessment foot = Shipped.ruleCases().get("N003").assessment();
    assertThat(Shipped.fired(advisor, foot, 0)).contains("N003", "Y002");
    assertThat(Shipped.fired(advisor, foot, 0))
        .containsAll(Shipped.fired(Shipped.ADVISOR, foot, 0));
  }

  @Test
  void the_shipped_rules_say_what_they_said() throws Exception {
    Advisor advisor = new Advisor(FolderRules.load(folder));
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      byte[] bytes = Files.readAllBytes(file);
      ReadResult read = AssessmentReader.read(bytes, file.toString(), List.of());
      Assessment foot = ((ReadResult.Good) read).assessment();
      assertThat(Shipped.fired(advisor, foot, 0))
          .as(file.toString())
          .containsAll(Shipped.fired(Shipped.ADVISOR, foot, 0));
    }
  }

  @Test
  void faults_name_file_line_and_rule_in_plain_words() throws Exception {
    replace("our-yard/y001.drl", "shodDaysAgo", "shodDaysAgoo");
    replace("our-yard/y001.yaml", "{most}", "{mots}");
    replace("our-yard/limits.yaml", "safer: down", "safer: lower");
    List<String> faults = faults();
    assertThat(faults)
        .anyMatch(text -> text.startsWith("our-yard/y001.drl:3: Y001: there is no reading shodD"))
        .anyMatch(text -> text.contains("Y001: the text has a hole {mots}"))
        .anyMatch(
            text ->
                text.startsWith(
                    "our-yard/limits.yaml:10: our-yard.y001.days: safer cannot be lower"));
    assertThat(faults)
        .noneMatch(text -> text.matches("(?s).*(java|drools|Exception|hornbook\\.rule).*"));
  }

  @Test
  void what_the_shipped_rules_have_already_is_refused() throws Exception {
    replace("our-yard/y001.drl", "@id(Y001)", "@id(N003)");
    replace("our-yard/y001.yaml", "Y001", "N003");
    replace("our-yard/limits.yaml", "our-yard.y001.days", "nails.branch.least");
    replace("rulebook.yaml", "letter: Y", "letter: N");
    write("sources.yaml", "lungwitz-1913: {author: x, title: x, year: 2000, where: x}\n");
    write("our-yard/findings.yaml", "low-heels: {label: x}\n");
    assertThat(faults())
        .anyMatch(text -> text.contains("N003: the id stands already in nailing/count.drl:"))
        .anyMatch(text -> text.contains("nails.branch.least: it is a limit of the shipped rules"))
        .anyMatch(text -> text.contains("has the letter of the shipped topic nailing"))
        .anyMatch(text -> text.contains("there is a source lungwitz-1913 already"))
        .anyMatch(text -> text.contains("low-heels is listed under balance too"));
  }

  @Test
  void they_are_read_once_for_this_user_alone() throws Exception {
    Path kept = cache.resolve("hornbook/rules");
    LoadedRules first = FolderRules.load(folder, kept);
    Path file = onlyFile(kept);
    byte[] bytes = Files.readAllBytes(file);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(kept)))
        .isEqualTo("rwx------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    LoadedRules second = FolderRules.load(folder, kept);
    assertThat(second.book()).isEqualTo(first.book());
    assertThat(Files.readAllBytes(onlyFile(kept))).isEqualTo(bytes);
    Assessment foot = foot("visit: {shodDaysAgo: 60}");
    assertThat(Shipped.fired(new Advisor(second), foot, 0)).contains("Y001");
  }

  @Test
  void what_is_kept_is_taken_and_what_is_damaged_built_anew() throws Exception {
    Path kept = cache.resolve("hornbook/rules");
    FolderRules.load(folder, kept);
    Path file = onlyFile(kept);
    byte[] sound = Files.readAllBytes(file);
    for (byte[] damaged :
        List.of(
            new byte[0],
            "no rules".getBytes(StandardCharsets.UTF_8),
            java.util.Arrays.copyOf(sound, sound.length - 1))) {
      Files.write(file, damaged);
      Advisor advisor = new Advisor(FolderRules.load(folder, kept));
      assertThat(Shipped.fired(advisor, foot("visit: {shodDaysAgo: 60}"), 0)).contains("Y001");
      assertThat(Files.size(file)).isGreaterThan(1000);
    }
  }

  @Test
  void a_change_is_never_served_what_was_kept_before_it() throws Exception {
    Path kept = cache.resolve("hornbook/rules");
    FolderRules.load(folder, kept);
    replace("our-yard/limits.yaml", "value: 56", "value: 70");
    Advisor advisor = new Advisor(FolderRules.load(folder, kept));
    assertThat(Shipped.fired(advisor, foot("visit: {shodDaysAgo: 60}"), 0)).doesNotContain("Y001");
    replace("our-yard/y001.drl", "@basis(practice)", "@basis(practise)");
    assertThatThrownBy(() -> FolderRules.load(folder, kept)).isInstanceOf(RuleBaseFaulty.class);
  }

  @Test
  void without_a_place_to_keep_them_they_still_load() throws Exception {
    Path taken = cache.resolve("taken");
    Files.writeString(taken, "a file, not a folder");
    Advisor advisor = new Advisor(FolderRules.load(folder, taken.resolve("rules")));
    assertThat(Shipped.fired(advisor, foot("visit: {shodDaysAgo: 60}"), 0)).contains("Y001");
  }

  private static Path onlyFile(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> all = files.toList();
      assertThat(all).hasSize(1);
      return all.get(0);
    }
  }

  private static Assessment foot(String visit) {
    String text = "format: hornbook-assessment/1\n" + visit + "\nfeet: [{limb: left-fore}]\n";
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ((ReadResult.Good) AssessmentReader.read(bytes, "foot", List.of())).assessment();
  }
}
