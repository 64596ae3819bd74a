package hornbook.rulebook.practice;

import hornbook.assessment.field.Day;
import hornbook.assessment.field.FormatName;
import hornbook.assessment.read.KeyReader;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileTree;
import hornbook.assessment.tree.LocatedValue;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Practice;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Reads a local practice, and holds it against the rule base it is to change. */
public final class PracticeReader {
  private final Rulebook book;
  private final List<Fault> faults;

  private PracticeReader(Rulebook book, List<Fault> faults) {
    this.book = book;
    this.faults = faults;
  }

  /**
   * The practice; of use only where no fault was found. Never throws for what is in the file.
   *
   * @param name the file as the user named it
   * @param acceptLessSafe whether limits may be moved toward less safety
   * @param faults takes everything found wrong, with its place
   */
  public static Practice read(
      byte[] bytes, String name, Rulebook book, boolean acceptLessSafe, List<Fault> faults) {
    LocatedValue tree = FileTree.read(bytes, name, "a local practice", faults);
    Practice practice =
        tree == null ? null : new PracticeReader(book, faults).practice(tree, acceptLessSafe);
    faults.sort((one, other) -> one.place().compareTo(other.place()));
    return practice;
  }

  private Practice practice(LocatedValue tree, boolean acceptLessSafe) {
    KeyReader keys =
        KeyReader.of(
            tree, faults, "format", "name", "by", "date", "limits", "notes", "law", "emergency");
    if (keys == null) {
      return null;
    }
    keys.value("format", new FormatName(Practice.FORMAT), true);
    String name = keys.text("name");
    String by = keys.text("by");
    LocalDate date = (LocalDate) keys.value("date", new Day(), true);
    LimitChanges changes = new LimitChanges(book, acceptLessSafe, faults);
    keys.items("limits").forEach(changes::take);
    changes.order();
    List<Practice.Note> notes = new ArrayList<>();
    keys.items("notes").forEach(one -> notes.add(note(one)));
    List<Practice.EmergencyNumber> emergency = new ArrayList<>();
    keys.items("emergency").forEach(one -> emergency.add(number(one)));
    String law = keys.optional("law");
    notes.removeIf(Objects::isNull);
    emergency.removeIf(Objects::isNull);
    return faults.isEmpty()
        ? new Practice(name, by, date, changes.made(), notes, law, emergency)
        : null;
  }

  private Practice.Note note(LocatedValue one) {
    KeyReader keys = KeyReader.of(one, faults, "topic", "rule", "technique", "says");
    if (keys == null) {
      return null;
    }
    List<String> given = List.of("topic", "rule", "technique").stream().filter(keys::has).toList();
    String says = keys.text("says");
    if (given.size() != 1) {
      String found = given.isEmpty() ? "none of them" : String.join(" and ", given);
      keys.refuse("says", found, "one of topic, rule, technique", null);
      return null;
    }
    String about = given.get(0);
    String id = keys.word(about, known(about), true);
    return new Practice.Note(
        switch (about) {
          case "topic" -> Practice.About.TOPIC;
          case "rule" -> Practice.About.RULE;
          default -> Practice.About.TECHNIQUE;
        },
        id,
        says);
  }

  private List<String> known(String about) {
    return switch (about) {
      case "topic" -> book.topics().stream().map(Topic::id).toList();
      case "rule" -> List.copyOf(book.rules().keySet());
      default -> {
        List<String> ids =
            new ArrayList<>(book.techniques().stream().map(NamedOption::id).toList());
        book.supports().forEach(support -> ids.add(support.id()));
        yield ids;
      }
    };
  }

  private Practice.EmergencyNumber number(LocatedValue one) {
    KeyReader keys = KeyReader.of(one, faults, "name", "number");
    return keys == null
        ? null
        : new Practice.EmergencyNumber(keys.text("name"), keys.text("number"));
  }
}
