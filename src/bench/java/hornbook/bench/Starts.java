package hornbook.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the packaged program takes as a process, each time beside something to compare it with. */
final class Starts {
  private static final int RUNS = 25;
  private static final int LONG_RUNS = 3;
  private static final int MOST_WAITED = 240;
  private static final int COLD_LINES = 80_000;
  private static final int LINES = 120_000;

  private final Path program;
  private final Path folder;

  /**
   * @param folder for files that go again
   */
  Starts(Path program, Path folder) {
    this.program = program.toAbsolutePath();
    this.folder = folder;
  }

  List<Aim> aims() throws IOException, InterruptedException {
    List<Aim> aims = new ArrayList<>();
    String java = System.getProperty("java.home");
    Path newer = newer();
    aims.add(cold(Path.of(java), "Java " + Runtime.version().feature(), 6.2));
    double on25 = newer == null ? Double.NaN : cold(newer, "", 7).today();
    aims.add(new Aim("cold assess, Java 25 with its cache, times a bare start", true, 7, "", on25));
    Started bare = bare(Path.of(java));
    Started help = hornbook(program, Map.of(), "--help");
    help.seconds();
    aims.add(new Aim("--help, times a bare start", true, 3, "", help.timesThatOf(bare, RUNS)));
    Path one = Files.write(folder.resolve("one.json"), Feet.file(1, 8));
    Path two = Files.write(folder.resolve("two.json"), Feet.file(2, 8));
    Started assess = hornbook(program, Map.of(), "assess", one.toString());
    aims.add(new Aim("resident memory of assess", true, 70, " MB", memory(assess)));
    Started pair = hornbook(program, Map.of(), "assess", two.toString());
    aims.add(
        new Aim("a pair of feet, times one foot", true, 1.1, "", pair.timesThatOf(assess, RUNS)));
    aims.add(firstStart(one));
    aims.addAll(batch());
    Path sixty = Files.write(folder.resolve("sixty.json"), Feet.file(1, 60));
    Started sure = hornbook(program, Map.of(), "confidence", "--runs", "1000", sixty.toString());
    aims.add(new Aim("confidence, 60 stretches, 1,000 runs", true, 10, " s", sure.seconds()));
    return aims;
  }

  private static double memory(Started started) {
    List<Double> all = new ArrayList<>();
    for (int run = 0; run < 7; run++) {
      all.add(started.megabytes());
    }
    return Started.median(all);
  }

  private Aim cold(Path java, String name, double most) throws InterruptedException {
    Map<String, String> environment = Map.of("JAVA_HOME", java.toString());
    String foot = program.resolve("cases/exercises/showjumper-torn-side.yaml").toString();
    Started assess = hornbook(program, environment, "assess", foot);
    assess.seconds();
    waitForArchive(program);
    assess.seconds();
    return new Aim(
        "cold assess, " + name + ", times a bare start",
        true,
        most,
        "",
        assess.timesThatOf(bare(java), RUNS));
  }

  /** Copied anew, the program has no archive yet; compared with one that makes none. */
  private Aim firstStart(Path foot) throws IOException, InterruptedException {
    List<Double> ratios = new ArrayList<>();
    for (int run = 0; run < LONG_RUNS; run++) {
      Path copy = folder.resolve("copy" + run);
      copy(program, copy);
      Map<String, String> apart = Map.of("XDG_CACHE_HOME", copy.resolve("cache").toString());
      Map<String, String> off = new HashMap<>(apart);
      off.put("HORNBOOK_ARCHIVE", "off");
      Started without = hornbook(copy, off, "assess", foot.toString());
      without.seconds();
      double none = without.seconds();
      ratios.add(hornbook(copy, apart, "assess", foot.toString()).seconds() / none);
      waitForArchive(copy);
      delete(copy);
    }
    return new Aim(
        "first start in a new place, times one without an archive",
        true,
        1.15,
        "",
        Started.median(ratios));
  }

  /** Java compiles for half a minute and more before it is as fast as it gets. */
  private List<Aim> batch() throws IOException {
    Path lines = write(Feet.lines());
    return List.of(batch(lines, 3_000), batch(lines, 5_000, "--brief"));
  }

  private Aim batch(Path lines, double least, String... options) {
    List<String> arguments = new ArrayList<>(List.of("batch"));
    arguments.addAll(List.of(options));
    arguments.add(lines.toString());
    Started batch = hornbook(program, Map.of(), arguments.toArray(String[]::new));
    return new Aim(
        String.join(" ", arguments.subList(0, arguments.size() - 1))
            + ", one-foot assessments a second, warm",
        false,
        least,
        "",
        batch.linesPerSecond(COLD_LINES, LINES));
  }

  private Path write(List<byte[]> lines) throws IOException {
    Path file = folder.resolve("lines.ndjson");
    try (OutputStream to = new BufferedOutputStream(Files.newOutputStream(file))) {
      for (int at = 0; at < LINES; at++) {
        to.write(lines.get(at % lines.size()));
        to.write('\n');
      }
    }
    return file;
  }

  private static Started hornbook(Path home, Map<String, String> environment, String... arguments) {
    List<String> command = new ArrayList<>(List.of(home.resolve("bin/hornbook").toString()));
    command.addAll(List.of(arguments));
    return new Started(command, environment);
  }

  private static Started bare(Path java) {
    String here = Bare.class.getProtectionDomain().getCodeSource().getLocation().getPath();
    return new Started(
        List.of(java.resolve("bin/java").toString(), "-cp", here, Bare.class.getName()), Map.of());
  }

  /** A Java 25, named by {@code JAVA25_HOME} or where systems put it; null where there is none. */
  private static Path newer() throws IOException {
    String named = System.getenv("JAVA25_HOME");
    if (named != null) {
      return Path.of(named);
    }
    Path usual = Path.of("/usr/lib/jvm");
    if (!Files.isDirectory(usual)) {
      return null;
    }
    try (Stream<Path> all = Files.list(usual)) {
      return all.filter(one -> one.getFileName().toString().matches(".*\\b25\\b.*"))
          .findFirst()
          .orElse(null);
    }
  }

  private static void waitForArchive(Path home) throws InterruptedException {
    Thread.sleep(300);
    for (int second = 0; second < MOST_WAITED && making(home); second++) {
      Thread.sleep(1000);
    }
  }

  private static boolean making(Path home) {
    try (Stream<Path> all = Files.list(home.resolve("lib"))) {
      return all.anyMatch(one -> one.toString().endsWith(".making"));
    } catch (IOException gone) {
      return false;
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        if (!one.getFileName().toString().matches("hornbook-.*\\.(jsa|aot|of|no|crash)")) {
          Files.copy(one, to.resolve(from.relativize(one).toString()));
        }
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes any) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path one, IOException any) throws IOException {
            Files.delete(one);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
