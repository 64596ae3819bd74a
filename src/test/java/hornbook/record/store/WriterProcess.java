package hornbook.record.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A program of its own that writes entries, and says each number once it is told it was written.
 */
final class WriterProcess {
  private WriterProcess() {}

  /** Takes the book, a name, how many entries, and whether each has a picture. */
  public static void main(String[] arguments) throws IOException {
    BookFolder book = new BookFolder(Path.of(arguments[0]));
    Path photo = Files.createTempFile(beside(book), "hoof", ".jpg");
    Files.write(photo, new byte[200_000]);
    EntryWriter writer = new EntryWriter(book, new LocalDisk());
    List<Path> photos = Boolean.parseBoolean(arguments[3]) ? List.of(photo) : List.of();
    try {
      for (int i = 1; i <= Integer.parseInt(arguments[2]); i++) {
        String done = arguments[1] + " " + i;
        int number = writer.add(Sample.entry("Tansy", done), photos).entry().number();
        System.out.println(number + " " + done);
      }
    } finally {
      Files.deleteIfExists(photo);
    }
  }

  /** Where the test clears up after a writer that was killed. */
  private static Path beside(BookFolder book) {
    return book.root().toAbsolutePath().getParent();
  }

  static ProcessBuilder builder(Path book, String name, int entries, boolean photos) {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    command.addAll(List.of("-cp", classes, WriterProcess.class.getName()));
    command.addAll(
        List.of(book.toString(), name, Integer.toString(entries), Boolean.toString(photos)));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
  }
}
