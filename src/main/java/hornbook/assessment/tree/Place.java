package hornbook.assessment.tree;

/** A place in a file; lines and columns count from 1. */
public record Place(String file, int line, int column) implements Comparable<Place> {
  /** The file name of what was given with {@code --set}; its line is the number of the setting. */
  public static final String SETTING = "--set";

  public boolean inSetting() {
    return SETTING.equals(file);
  }

  @Override
  public int compareTo(Place other) {
    int kind = Boolean.compare(inSetting(), other.inSetting());
    int lines = kind != 0 ? kind : Integer.compare(line, other.line);
    return lines != 0 ? lines : Integer.compare(column, other.column);
  }
}
