package hornbook.rulebook.compile;

import hornbook.rulebook.file.RuleFault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the rules that the engine does not take, by compiling ever smaller parts: what the engine
 * itself says of them names neither rule nor line, and is not for people.
 */
final class RefusedRules {
  private static final Pattern ID = Pattern.compile("@id\\s*\\(\\s*(\\w+)\\s*\\)");

  /** One rule and the lines it takes, the first counted as 1. */
  private record Part(String file, int first, int last, String id) {}

  private final Map<String, String[]> lines = new LinkedHashMap<>();
  private final List<Part> refused = new ArrayList<>();

  private RefusedRules() {}

  /** A fault for every rule that is refused; never empty. */
  static List<RuleFault> in(Map<String, String> texts) {
    RefusedRules search = new RefusedRules();
    List<Part> parts = new ArrayList<>();
    texts.forEach(
        (file, text) -> {
          search.lines.put(file, text.split("\n", -1));
          parts.addAll(search.parts(file));
        });
    search.narrow(parts);
    List<RuleFault> faults = new ArrayList<>();
    for (Part part : search.refused) {
      faults.add(
          new RuleFault(
              part.file(),
              part.first(),
              part.id(),
              "the engine does not take this rule, though it reads like one",
              "write it with the plain letters and names its neighbours have: a word or name in it"
                  + " may be one that the engine keeps for itself"));
    }
    if (faults.isEmpty()) {
      faults.add(
          new RuleFault(
              "",
              0,
              "",
              "the engine takes every rule alone, but not all of them together",
              "look for two rules of one title, or take out what was added last"));
    }
    return faults;
  }

  private List<Part> parts(String file) {
    List<Part> parts = new ArrayList<>();
    String[] all = lines.get(file);
    int first = -1;
    String id = "";
    for (int at = 0; at < all.length; at++) {
      String line = all[at].strip();
      if (first < 0 && line.startsWith("rule")) {
        first = at;
        id = "";
      }
      Matcher named = ID.matcher(line);
      if (first >= 0 && id.isEmpty() && named.find()) {
        id = named.group(1);
      }
      if (first >= 0 && line.equals("end")) {
        parts.add(new Part(file, first + 1, at + 1, id));
        first = -1;
      }
    }
    return parts;
  }

  private void narrow(List<Part> parts) {
    if (parts.isEmpty() || RuleCompiler.built(only(parts)) != null) {
      return;
    }
    if (parts.size() == 1) {
      refused.add(parts.get(0));
      return;
    }
    int half = parts.size() / 2;
    narrow(parts.subList(0, half));
    narrow(parts.subList(half, parts.size()));
  }

  /** The files with these rules alone, each on the lines it had. */
  private Map<String, String> only(List<Part> parts) {
    Map<String, String[]> kept = new LinkedHashMap<>();
    for (Part part : parts) {
      String[] all = lines.get(part.file());
      String[] lone = kept.computeIfAbsent(part.file(), file -> emptied(all.length));
      System.arraycopy(
          all, part.first() - 1, lone, part.first() - 1, part.last() - part.first() + 1);
    }
    Map<String, String> texts = new LinkedHashMap<>();
    kept.forEach((file, lone) -> texts.put(file, String.join("\n", lone)));
    return texts;
  }

  private static String[] emptied(int length) {
    String[] lines = new String[length];
    java.util.Arrays.fill(lines, "");
    return lines;
  }
}
