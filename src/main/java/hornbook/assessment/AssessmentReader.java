package hornbook.assessment;

import hornbook.assessment.Located.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads an assessment, or a case file, from YAML or JSON, and checks all of it. */
public final class AssessmentReader {
  /** The most bytes a file may have. */
  public static final int LARGEST = 4 << 20;

  private AssessmentReader() {}

  /**
   * Never throws for what is in the file: whatever is wrong comes back as faults, all at once.
   *
   * @param bytes the whole file, or standard input
   * @param name the file as the user named it, for the faults
   * @param set changes to make before checking
   */
  public static ReadResult read(byte[] bytes, String name, List<Setting> set) {
    List<Fault> faults = new ArrayList<>();
    try {
      Located root = FileTree.readable(bytes, name, "an assessment", faults);
      return check(root, set, faults);
    } catch (Unreadable unreadable) {
      faults.add(unreadable.fault());
      return faulty(faults);
    }
  }

  /** What was read, with further changes made; nothing of the file is read anew. */
  public static ReadResult again(ReadResult.Good read, List<Setting> set) {
    List<Fault> faults = new ArrayList<>();
    return checked(read.tree(), read.caseFile(), set, faults);
  }

  private static ReadResult check(Located root, List<Setting> set, List<Fault> faults) {
    Optional<CaseFile> caseFile = Optional.empty();
    Located tree = root;
    if (root instanceof Group whole && whole.get(CaseFile.ASSESSMENT) != null) {
      caseFile = Optional.of(CaseFile.of(whole));
      tree = whole.get(CaseFile.ASSESSMENT);
      Checker.refuseUnknownKeys(whole, CaseFile.KEYS, faults);
    }
    return checked(tree, caseFile, set, faults);
  }

  private static ReadResult checked(
      Located read, Optional<CaseFile> caseFile, List<Setting> set, List<Fault> faults) {
    Located tree = read;
    for (int i = 0; i < set.size(); i++) {
      tree = set.get(i).applyTo(tree, i + 1, faults);
    }
    Assessment assessment = new Checker(faults).read(tree);
    return faults.isEmpty() ? new ReadResult.Good(assessment, tree, caseFile) : faulty(faults);
  }

  private static ReadResult faulty(List<Fault> faults) {
    faults.sort((one, other) -> one.place().compareTo(other.place()));
    return new ReadResult.Faulty(List.copyOf(faults));
  }
}
