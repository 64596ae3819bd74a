package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Writing;
import hornbook.cli.file.InputFile;
import hornbook.cli.file.ResultFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Where the result goes. */
public final class OutputOption {
  public static final String NAME = "--output";

  private final ArgumentValue<String> file;
  private final ArgumentValue<Boolean> force;

  public OutputOption(Arguments arguments) {
    file =
        arguments.text(
            "FILE",
            "write the result to FILE instead of the screen; an existing file is replaced only if"
                + " hornbook wrote it",
            "-o",
            NAME);
    force = arguments.flag("--force", "let --output replace a file that hornbook did not write");
  }

  /** Whether the result goes to standard output. */
  public boolean toScreen() {
    return file.value() == null || file.value().equals(InputFile.STANDARD_INPUT);
  }

  /** The file named, {@code -} for standard output; null when none was. */
  public String file() {
    return file.value();
  }

  public void deliver(String result, Surroundings surroundings) {
    if (toScreen()) {
      surroundings.page(result);
    } else {
      place().write(result);
    }
  }

  /** The same for what is no text. */
  public void deliver(byte[] result, Surroundings surroundings) {
    if (toScreen()) {
      surroundings.print(result);
    } else {
      place().write(result);
    }
  }

  /** As {@link #stream}, in a pager where it is longer than the screen. */
  public void pages(Writing result, Surroundings surroundings) throws IOException {
    if (toScreen()) {
      surroundings.page(result);
    } else {
      stream(result, surroundings);
    }
  }

  /**
   * As {@link #deliver(String, Surroundings)}, for a result that is never all in memory.
   *
   * @throws IOException what went wrong while it was made, not while it was written
   */
  public void stream(Writing result, Surroundings surroundings) throws IOException {
    if (toScreen()) {
      surroundings.stream(result);
    } else {
      place().write(result);
    }
  }

  /**
   * As {@link #deliver(String, Surroundings)}, but never in place of a file that is there already.
   */
  public void deliverNew(String result, Surroundings surroundings) {
    if (toScreen()) {
      surroundings.page(result);
    } else {
      new ResultFile(file.value()).writeNew(result);
    }
  }

  /** The file, unless it holds what is no result and may not be lost. */
  private ResultFile place() {
    ResultFile result = new ResultFile(file.value());
    result.spareOwn(force.value());
    return result;
  }

  /**
   * Refuses to put the result in the place of what it was made from, or of a file of the user's
   * own, before any work is done.
   */
  public void spare(List<String> inputs) {
    for (String input : inputs) {
      if (!toScreen() && same(input)) {
        throw Failure.usage(
            "--output " + file.value() + " is one of the files to be read", "name another file");
      }
    }
    if (!toScreen()) {
      place();
    }
  }

  private boolean same(String input) {
    try {
      Path one = Path.of(input);
      Path other = Path.of(file.value());
      return Files.isRegularFile(one) && Files.exists(other) && Files.isSameFile(one, other);
    } catch (IOException | InvalidPathException unknown) {
      return false;
    }
  }
}
