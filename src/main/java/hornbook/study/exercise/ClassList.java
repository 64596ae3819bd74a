package hornbook.study.exercise;

import hornbook.assessment.tree.Fault;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The learners of a class, one a line, and the name of the file each of them gets. */
public final class ClassList {
  private static final int LONGEST = 80;

  private ClassList() {}

  /** Names or numbers by the names of their files, in the order of the list. */
  public static Map<String, String> read(byte[] bytes, String shown, List<Fault> faults) {
    Map<String, String> files = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    int number = 0;
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\\R", -1)) {
      number++;
      String name = line.replace("\ufeff", "").strip();
      boolean plain = name.chars().noneMatch(Character::isISOControl) && name.length() <= LONGEST;
      if (name.isEmpty() || name.startsWith("#")) {
        continue;
      }
      if (!plain || names.contains(name)) {
        String found = plain ? "a second " + name : "a line that is no name";
        String allowed = "one name or number a line, each once, up to " + LONGEST + " letters";
        faults.add(new Fault(shown, number, 1, "", found, allowed, null));
      } else {
        names.add(name);
        files.put(unused(name, files), name);
      }
    }
    if (names.isEmpty() && faults.isEmpty()) {
      faults.add(new Fault(shown, 1, 1, "", "no names", "one name or number a line", null));
    }
    return files;
  }

  /** A name without what some system cannot have in the name of a file. */
  private static String unused(String name, Map<String, String> taken) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String stem = plain.replaceAll("^-|-$", "");
    String base = stem.isEmpty() ? "learner" : stem;
    String unused = base;
    for (int more = 2; taken.containsKey(unused); more++) {
      unused = base + "-" + more;
    }
    return unused;
  }
}
