package hornbook.rulebook.compile;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.load.CatalogueWriter;
import hornbook.rulebook.load.ModelClasses;
import hornbook.rulebook.load.ShippedRules;
import hornbook.rulebook.read.RulebookReader;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;

/** The step of the build that compiles the rule base into the program's classes. */
public final class CompileRules {
  private CompileRules() {}

  /**
   * Takes the folder of the rules and the folder of the classes; ends with 1 and all faults told.
   */
  public static void main(String[] arguments) throws IOException {
    try {
      Path rules = Path.of(arguments[0]);
      Path classes = Path.of(arguments[1]);
      BuildStamp stamp = BuildStamp.of(rules, classes);
      if (!stamp.current()) {
        write(rules, classes);
        stamp.set();
      }
    } catch (RuleBaseFaulty faulty) {
      System.err.println(faulty.getMessage());
      System.exit(1);
    }
  }

  /**
   * Reads, checks and compiles the rules of a folder and writes classes and catalogue below
   * another.
   */
  static Rulebook write(Path rules, Path classes) throws IOException, RuleBaseFaulty {
    RulebookReader.Draft draft = RulebookReader.read(rules);
    RuleCompiler.Compiled compiled = RuleCompiler.compile(draft.texts());
    Rulebook book = draft.compiledAs(compiled.modelClass());
    clear(classes.resolve("hornbook/rules"));
    for (Map.Entry<String, byte[]> one : compiled.classes().entrySet()) {
      Path file = classes.resolve(one.getKey());
      Files.createDirectories(file.getParent());
      Files.write(file, one.getValue());
    }
    Path catalogue = classes.resolve(ShippedRules.CATALOGUE);
    Files.createDirectories(catalogue.getParent());
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(catalogue))) {
      CatalogueWriter.write(book, out);
    }
    Files.writeString(classes.resolve(ModelClasses.LIST), compiled.list());
    return book;
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
