package hornbook.cli.base;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Tells the user of a fault in the program itself. What went on inside goes to a file, and only
 * when the user asks for it.
 */
public final class ProgramFault {
  /** Set to 1, it has the inside of a fault written to a file. */
  static final String TRACE = "HORNBOOK_TRACE";

  private ProgramFault() {}

  public static String told(Throwable fault, Surroundings surroundings) {
    if (lacksMemory(fault)) {
      return Failure.of(
              ExitCode.FAULT,
              "the program has too little memory for this",
              "give it more memory, such as HORNBOOK_JAVA_OPTIONS=-Xmx512m")
          .text();
    }
    String cure =
        surroundings.environment().getOrDefault(TRACE, "").equals("1")
            ? traced(fault)
            : "to see more: run it again with "
                + TRACE
                + "=1 set; it writes a file for the authors";
    return Failure.of(
            ExitCode.FAULT,
            "the program failed; this is not your mistake",
            cure,
            "please send that file to the authors, with the command and the assessment")
        .text();
  }

  private static boolean lacksMemory(Throwable fault) {
    Throwable at = fault;
    while (at != null && !(at instanceof OutOfMemoryError)) {
      at = at.getCause();
    }
    return at != null;
  }

  private static String traced(Throwable fault) {
    StringWriter inside = new StringWriter();
    fault.printStackTrace(new PrintWriter(inside));
    String versions =
        List.of("java.vendor", "java.runtime.version", "os.name", "os.arch").stream()
            .map(key -> key + "=" + System.getProperty(key) + "\n")
            .reduce("", String::concat);
    try {
      Path file = Files.createTempFile("hornbook-trace-", ".txt");
      Files.writeString(file, versions + inside);
      return "written to " + file;
    } catch (IOException unwritten) {
      return "no trace could be written into the folder for temporary files";
    }
  }
}
