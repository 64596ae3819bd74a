package hornbook.assessment.read;

import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileTree;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads an assessment, or a case file, from YAML or JSON, and checks all of it. */
public final class AssessmentReader {

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
      LocatedValue root = FileTree.readable(bytes, name, "an assessment", faults);
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

  private static ReadResult check(LocatedValue root, List<Setting> set, List<Fault> faults) {
    Optional<CaseFile> caseFile = Optional.empty();
    LocatedValue tree = root;
    if (root instanceof Group whole && whole.get(FileTree.ASSESSMENT) != null) {
      caseFile = Optional.of(CaseFile.of(whole));
      tree = whole.get(FileTree.ASSESSMENT);
      Checker.refuseUnknownKeys(whole, CaseFile.KEYS, faults);
    }
    return checked(tree, caseFile, set, faults);
  }

  private static ReadResult checked(
      LocatedValue read, Optional<CaseFile> caseFile, List<Setting> set, List<Fault> faults) {
    LocatedValue tree = read;
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
