package hornbook.rulebook.compile;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The rule base of a folder: whole, or added to the shipped one. */
public final class FolderRules {
  private FolderRules() {}

  /** Reads and checks the rules of a folder. */
  public static LoadedRules load(Path folder) throws IOException, RuleBaseFaulty {
    return new LoadedRules(RulebookReader.read(folder).book());
  }

  /**
   * The same, but read once only: the catalogue is kept in a folder, and taken from there as long
   * as neither rules nor program change.
   *
   * @param kept the folder; null to keep nothing
   */
  public static LoadedRules load(Path folder, Path kept) throws IOException, RuleBaseFaulty {
    List<RuleFault> faults = new ArrayList<>();
    RuleFiles files = RuleFiles.read(folder, faults);
    if (kept == null || !faults.isEmpty()) {
      return load(folder);
    }
    KeptRules keep = new KeptRules(kept, files);
    Rulebook found = keep.read();
    if (found != null) {
      return new LoadedRules(found);
    }
    LoadedRules loaded = load(folder);
    keep.write(loaded.book());
    return loaded;
  }
}
