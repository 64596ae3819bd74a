package hornbook.assessment.tree;

import java.util.List;

/** Reads a file of names and values, YAML or JSON, as the tree of what stands in it. */
public final class FileTree {
  /** The key of a case file under which the assessment stands. */
  public static final String ASSESSMENT = "assessment";

  private FileTree() {}

  /**
   * The tree; null, with a fault, where no sense can be made of the file. Never throws for what is
   * in it.
   *
   * @param bytes the whole file, or standard input
   * @param name the file as the user named it, for the faults
   * @param wanted what the file is to hold, in words
   */
  public static LocatedValue read(byte[] bytes, String name, String wanted, List<Fault> faults) {
    try {
      return readable(bytes, name, wanted, faults);
    } catch (Unreadable unreadable) {
      faults.add(unreadable.fault());
      return null;
    }
  }

  /**
   * @throws Unreadable where no sense can be made of the file
   */
  public static LocatedValue readable(
      byte[] bytes, String name, String wanted, List<Fault> faults) {
    String text = FileText.of(bytes, name, wanted);
    return text.stripLeading().startsWith("{")
        ? JsonTree.read(text, name, faults)
        : YamlTree.read(text, name, wanted, faults);
  }
}
