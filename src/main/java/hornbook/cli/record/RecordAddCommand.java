package hornbook.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.Assessments;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.SetOption;
import hornbook.record.Departure;
import hornbook.record.Entry;
import hornbook.record.NewEntry;
import hornbook.record.store.BookFolder;
import hornbook.record.store.EntryJson;
import hornbook.record.store.EntryWriter;
import hornbook.record.store.LocalDisk;
import hornbook.record.store.Written;
import hornbook.report.record.WrittenText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes an entry. */
final class RecordAddCommand extends Task {
  private final ArgumentValue<List<String>> file =
      arguments.operands(
          "FILE", "0..1", "an assessment or a case; may be left out with --corrects");
  private final ChoiceOption choice = new ChoiceOption(arguments);
  private final WordsOption words = new WordsOption(arguments);
  private final ArgumentValue<List<String>> photos =
      arguments.texts("FILE", "a picture to copy in; may be repeated", "--photo");
  private final ArgumentValue<String> plan =
      arguments.text("FILE", "a job sheet to keep, as plan --format json writes it", "--plan");
  private final ArgumentValue<String> corrects =
      arguments.text("N", "the entry this one corrects", "--corrects");
  private final BookOption book = new BookOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final SetOption set = new SetOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);

  RecordAddCommand(Surroundings surroundings) {
    super(
        surroundings,
        "add",
        "Write a visit into the daybook: what was seen, advised, chosen and done.",
        "A choice against the advice needs a reason. An entry is never changed;",
        "a later one corrects it.",
        "",
        "Examples:",
        "  hornbook record add tansy.yaml --chose glue-on --done \"size 5\" --by \"A. S.\"",
        "  hornbook record add tansy.yaml --chose nail-on --because \"vet asked for it\"",
        "  hornbook record add tansy.yaml --chose glue-on --photo side.jpg",
        "  hornbook record add a.yaml --chose left-fore=glue-on --chose right-fore=none",
        "  hornbook record add --corrects 12 --outcome \"stayed on, sound at six weeks\"",
        "");
  }

  @Override
  public ExitCode run() {
    List<Path> pictures = PhotoFiles.of(photos.value());
    NewEntry entry = file.value().isEmpty() ? takenOver() : visit(file.value().get(0));
    BookFolder folder = book.folder(surroundings);
    Written written = written(folder, entry, pictures);
    surroundings.print(
        format.json()
            ? new String(EntryJson.bytes(written.entry().content()), StandardCharsets.UTF_8)
            : WrittenText.of(written, Labels.of(rules.of(surroundings).book())));
    return ExitCode.DONE;
  }

  private NewEntry visit(String name) {
    Entry old = corrects.value() == null ? null : old();
    ReadResult.Good read = Assessments.read(List.of(name), set.settings(), surroundings).get(0);
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    Map<String, String> chose = choice.of(read.assessment(), advisor.book());
    RecordedWords said = words.words();
    JsonNode sheet =
        plan.value() == null
            ? null
            : KeptPlan.of(plan.value(), read.assessment().horse().name(), chose, surroundings);
    Advice advice = advisor.advise(read.assessment());
    VisitRecord visit = new VisitRecord(read, advice);
    List<Departure> departures = visit.departures(chose, Labels.of(advisor.book()));
    demandReason(departures, said.because());
    return visit.entry(chose, departures, said, old == null ? null : old.number(), sheet);
  }

  private static void demandReason(List<Departure> departures, String because) {
    if (departures.isEmpty() || because != null) {
      return;
    }
    List<String> why = new ArrayList<>();
    for (Departure one : departures) {
      why.add(one.foot().replace('-', ' ') + ": " + one.says());
      why.addAll(one.forbidden());
    }
    why.add("to write it anyway, say why: --because \"...\"");
    throw Failure.usage("this departs from the advice", why.toArray(String[]::new));
  }

  private Entry old() {
    return BookReading.of(() -> book.book(surroundings).entry(corrects.value()));
  }

  /** An entry like another, but for what is said anew. */
  private NewEntry takenOver() {
    if (corrects.value() == null) {
      throw Failure.usage(
          "FILE is missing",
          "hornbook record add FILE --chose TECHNIQUE",
          "to correct an entry without a new assessment: --corrects N");
    }
    if (choice.given() || plan.value() != null || !set.settings().isEmpty()) {
      throw Failure.usage(
          "another choice, sheet or field needs the assessment",
          "hornbook record add FILE --corrects " + corrects.value() + " --chose TECHNIQUE");
    }
    RecordedWords said = words.words();
    if (said.equals(RecordedWords.NONE) && photos.value().isEmpty()) {
      throw Failure.usage(
          "there is nothing to correct", "give --done, --outcome, --because, --by or --photo");
    }
    return CorrectedEntry.of(old(), said);
  }

  private static Written written(BookFolder folder, NewEntry entry, List<Path> pictures) {
    try {
      return new EntryWriter(folder, new LocalDisk()).add(entry, pictures);
    } catch (IOException refused) {
      throw Failure.of(
          ExitCode.CANNOT_WRITE,
          "the entry cannot be written: " + BookReading.reason(refused),
          "nothing was written; the book is " + folder.root(),
          "make room there, or name another with --book DIR");
    }
  }
}
