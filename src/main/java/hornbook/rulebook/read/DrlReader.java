package hornbook.rulebook.read;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.RuleFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads the rules of one file, with the two sentences that stand over each, and refuses what no
 * rule may hold.
 */
public final class DrlReader {
  /** Goes before every file on its first line, so that lines keep their numbers. */
  public static final String HEADER =
      "package hornbook.rules; import hornbook.rulebook.fact.*; dialect \"java\"; ";

  private static final Set<String> ANNOTATIONS = Set.of("id", "topic", "basis", "since");

  private final String file;
  private final FaultCollector faults;

  DrlReader(String file, FaultCollector faults) {
    this.file = file;
    this.faults = faults;
  }

  List<RuleEntry> read(String text) {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
    PackageDescr parsed = null;
    try {
      parsed = parser.parse(false, HEADER + text);
    } catch (org.drools.drl.parser.DroolsParserException | RuntimeException unreadable) {
      fault(0, "", RuleFault.UNREADABLE + " as rules", "compare it with its neighbours");
    }
    if (parser.hasErrors()) {
      firstError(parser.getErrors());
    }
    List<RuleEntry> rules = new ArrayList<>();
    if (parsed != null && !parser.hasErrors()) {
      if (!rulesOnly(parsed)) {
        fault(
            1,
            "",
            "a rule file holds rules only",
            "take out imports, functions, queries, declared types and globals");
      }
      String[] lines = text.split("\n", -1);
      for (RuleDescr rule : parsed.getRules()) {
        RuleEntry entry = entry(rule, lines);
        if (entry == null) {
          faults.drop();
        } else {
          rules.add(entry);
        }
      }
    }
    return rules;
  }

  private RuleEntry entry(RuleDescr rule, String[] lines) {
    int line = rule.getLine();
    String id = annotation(rule, "id");
    if (id.isEmpty()) {
      fault(
          line,
          "",
          "the rule \"" + rule.getName() + "\" has no id",
          "write @id(X000) under its title");
      return null;
    }
    for (String name : new TreeSet<>(rule.getAnnotationNames())) {
      if (!ANNOTATIONS.contains(name)) {
        fault(line, id, "@" + name + " is not known", "allowed are @id @topic @basis @since");
      }
    }
    for (String attribute : new TreeSet<>(rule.getAttributes().keySet())) {
      if (!attribute.equals("dialect")) {
        fault(
            line,
            id,
            "rules have no " + attribute,
            "take it out: the order of rules decides nothing");
      }
    }
    List<Condition> conditions = new ArrayList<>();
    for (BaseDescr written : rule.getLhs().getDescrs()) {
      try {
        conditions.add(ConditionReader.read(written));
      } catch (ConditionReader.Refused refused) {
        fault(
            written.getLine() > 0 ? written.getLine() : line,
            id,
            refused.getMessage(),
            "the forms stand in rules/README.md");
      }
    }
    RuleConclusion outcome = null;
    try {
      outcome = ConclusionReader.read(String.valueOf(rule.getConsequence()));
    } catch (ConditionReader.Refused refused) {
      fault(rule.getConsequenceLine(), id, refused.getMessage(), "one rule, one conclusion");
    }
    List<String> over = commentAbove(lines, line);
    if (over.size() < 2) {
      fault(
          line,
          id,
          "two plain sentences have to stand over the rule",
          "say why it is so, and when it stays silent");
    } else if (over.stream().skip(1).noneMatch(DrlReader::speaksOfSilence)) {
      fault(
          line,
          id,
          "no sentence over the rule says when it stays silent",
          "begin the second with \"Silent\"");
    }
    Basis basis = basis(rule, id, line);
    boolean refused = conditions.size() < rule.getLhs().getDescrs().size();
    if (refused || outcome == null || over.size() < 2 || basis == null) {
      return null;
    }
    int silent = silentFrom(over);
    return new RuleEntry(
        id,
        rule.getName(),
        annotation(rule, "topic"),
        basis,
        annotation(rule, "since"),
        String.join(" ", over.subList(0, silent)),
        String.join(" ", over.subList(silent, over.size())),
        List.copyOf(conditions),
        outcome,
        null,
        file,
        line);
  }

  private Basis basis(RuleDescr rule, String id, int line) {
    String word = annotation(rule, "basis");
    for (Basis basis : Basis.values()) {
      if (basis.word().equals(word)) {
        return basis;
      }
    }
    fault(
        line,
        id,
        word.isEmpty() ? "no basis is given" : "there is no basis " + word,
        "@basis(published|quoted|derived|practice|memory)");
    return null;
  }

  private static String annotation(RuleDescr rule, String name) {
    AnnotationDescr annotation = rule.getAnnotation(name);
    return annotation == null || annotation.getSingleValueAsString() == null
        ? ""
        : annotation.getSingleValueAsString().trim();
  }

  /** The comment lines right above a rule, top first, one sentence a line or wrapped. */
  private static List<String> commentAbove(String[] lines, int ruleLine) {
    List<String> comment = new ArrayList<>();
    for (int at = ruleLine - 2; at >= 0 && lines[at].strip().startsWith("//"); at--) {
      comment.add(0, lines[at].strip().substring(2).strip());
    }
    return comment;
  }

  /**
   * The line on which the sentence about silence starts: the first that speaks of it, else the
   * last.
   */
  private static int silentFrom(List<String> comment) {
    for (int at = 1; at < comment.size(); at++) {
      if (speaksOfSilence(comment.get(at))) {
        return at;
      }
    }
    return comment.size() - 1;
  }

  private static boolean speaksOfSilence(String line) {
    String words = line.toLowerCase(Locale.ROOT);
    return words.startsWith("silent") || words.startsWith("stays silent");
  }

  /** Of the errors of a file only the first is worth telling: the others follow from it. */
  private void firstError(List<DroolsError> errors) {
    int first = Integer.MAX_VALUE;
    for (DroolsError error : errors) {
      for (int line : error.getLines()) {
        first = line > 0 ? Math.min(first, line) : first;
      }
    }
    fault(
        first == Integer.MAX_VALUE ? 0 : first,
        "",
        RuleFault.UNREADABLE + " as rules from about here",
        "look at the brackets, the quotes and the word end, here and just above");
  }

  private static boolean rulesOnly(PackageDescr parsed) {
    boolean queries =
        parsed.getRules().stream().anyMatch(org.drools.drl.ast.descr.QueryDescr.class::isInstance);
    return !queries
        && parsed.getImports().size() == 1
        && parsed.getFunctions().isEmpty()
        && parsed.getFunctionImports().isEmpty()
        && parsed.getAccumulateImports().isEmpty()
        && parsed.getTypeDeclarations().isEmpty()
        && parsed.getEnumDeclarations().isEmpty()
        && parsed.getEntryPointDeclarations().isEmpty()
        && parsed.getWindowDeclarations().isEmpty()
        && parsed.getGlobals().isEmpty();
  }

  private void fault(int line, String rule, String says, String cure) {
    faults.all().add(new RuleFault(file, Math.max(line, 0), rule, says, cure));
  }
}
