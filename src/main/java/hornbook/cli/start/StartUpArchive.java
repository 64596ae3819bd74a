package hornbook.cli.start;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the archive from which Java starts the program quickly. It fits one build of Java and one
 * place of the program; the launcher finds it by its name, and starts without it where there is
 * none.
 */
public final class StartUpArchive {
  private static final int KEEPS_COMPILED_CODE = 25;

  private final Path home;
  private final String name;
  private final boolean compiled = Runtime.version().feature() >= KEEPS_COMPILED_CODE;
  private final String ending = compiled ? "aot" : "jsa";

  private StartUpArchive(Path home, String name) {
    this.home = home;
    this.name = name;
  }

  /** Takes the program's folder, and the archive's path without its ending. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    new StartUpArchive(Path.of(arguments[0]).toRealPath(), arguments[1]).make();
  }

  /** Makes the archive, unless another process is about it. */
  private void make() throws IOException, InterruptedException {
    Path locked = Path.of(name + ".lock");
    try (FileChannel channel =
            FileChannel.open(locked, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock()) {
      if (lock != null) {
        train();
        Files.deleteIfExists(locked);
      }
    }
  }

  private void train() throws IOException, InterruptedException {
    Path list = Files.createTempFile("hornbook-classes-", ".list");
    Path unfinished = Path.of(name + ".part");
    Files.deleteIfExists(unfinished);
    boolean made =
        compiled
            ? java("-XX:AOTCacheOutput=" + unfinished, true)
            : java("-XX:DumpLoadedClassList=" + list, true)
                && java(
                    "-XX:SharedClassListFile=" + list,
                    false,
                    "-Xshare:dump",
                    "-XX:SharedArchiveFile=" + unfinished);
    Files.deleteIfExists(list);
    if (made && Files.exists(unfinished)) {
      Path archive = Path.of(name + "." + ending);
      Path note = Path.of(name + ".of");
      Files.deleteIfExists(note);
      move(unfinished, archive);
      Files.deleteIfExists(Path.of(name + ".crash"));
      Files.deleteIfExists(Path.of(name + ".no"));
      // Last of all: an archive that is newer than its note is taken for damaged.
      Files.writeString(note, home + "\n");
    } else {
      Files.writeString(Path.of(name + ".no"), "this Java makes no archive\n");
    }
  }

  /** Whether a Java started as the launcher starts it, with more options, ends well. */
  private boolean java(String option, boolean training, String... more)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("@" + home.resolve("lib/java.options"));
    command.add("@" + home.resolve("lib/" + ending + ".options"));
    command.add(option);
    command.addAll(List.of(more));
    command.addAll(List.of("-cp", home.resolve("lib/hornbook.jar").toString()));
    if (training) {
      command.addAll(List.of(Training.class.getName(), home.toString()));
    }
    return new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor()
        == 0;
  }

  private static void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
