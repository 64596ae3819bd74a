package hornbook.cli.record;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.record.store.BookProblem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;

/** Reads from a book, and says in plain words why it cannot be done. */
final class BookReading {
  /** Something read from a book. */
  interface Read<T> {
    T now() throws IOException, BookProblem;
  }

  private BookReading() {}

  static <T> T of(Read<T> read) {
    try {
      return read.now();
    } catch (BookProblem problem) {
      throw Failure.of(code(problem.kind()), problem.getMessage(), problem.cure());
    } catch (IOException unreadable) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "the daybook cannot be read: " + reason(unreadable),
          "check that its folder opens in another program");
    }
  }

  private static ExitCode code(BookProblem.Kind kind) {
    return kind == BookProblem.Kind.USAGE ? ExitCode.USAGE : ExitCode.NO_INPUT;
  }

  /** Why a disk refuses, without names of the program's parts. */
  static String reason(IOException refused) {
    if (refused instanceof AccessDeniedException) {
      return "this user has no right to";
    }
    if (refused instanceof FileSystemException system) {
      return system.getReason() == null ? "the system refuses" : system.getReason();
    }
    return String.valueOf(refused.getMessage());
  }
}
