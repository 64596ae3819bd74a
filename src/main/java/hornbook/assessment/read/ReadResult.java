package hornbook.assessment.read;

import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import java.util.List;
import java.util.Optional;

/** What came of reading a file: an assessment, or every fault found. */
public sealed interface ReadResult {
  /**
   * A checked assessment.
   *
   * @param tree of the assessment alone, with the places of its values
   * @param caseFile what stands round it, where the file is a case file
   */
  record Good(Assessment assessment, LocatedValue tree, Optional<CaseFile> caseFile)
      implements ReadResult {}

  /** Every fault of a file, in the order of the file. */
  record Faulty(List<Fault> faults) implements ReadResult {}
}
