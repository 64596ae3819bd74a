package hornbook.rulebook.compile;

import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.load.CatalogueWriter;
import hornbook.rulebook.load.ShippedRules;
import hornbook.rulebook.read.RulebookReader;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The step of the build that compiles the rule base into the catalogue beside the classes. */
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

  private static void write(Path rules, Path classes) throws IOException, RuleBaseFaulty {
    Path catalogue = classes.resolve(ShippedRules.CATALOGUE);
    Files.createDirectories(catalogue.getParent());
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(catalogue))) {
      CatalogueWriter.write(RulebookReader.read(rules).book(), out);
    }
  }
}
