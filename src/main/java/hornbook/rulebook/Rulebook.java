package hornbook.rulebook;

import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rule base as data: what its rules say, need and rest on. Techniques stand in order of
 * intervention, the least first; instructions are the sentences of the job sheets.
 *
 * @param digest sha256 over the files of the rule base
 * @param practice the local practice its limits were changed by, or null
 */
public record Rulebook(
    String version,
    String digest,
    List<Topic> topics,
    List<NamedOption> techniques,
    List<NamedOption> supports,
    Map<String, Source> sources,
    Map<String, FindingKind> findings,
    List<Limit> limits,
    Map<String, RuleEntry> rules,
    Map<String, Instruction> instructions,
    List<GlossaryTerm> glossary,
    Practice practice) {
  private static final Pattern BETWEEN_KEYS = Pattern.compile("[^a-z0-9-]+");
  private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)+");

  /** The same rule base under another version. */
  public Rulebook named(String other) {
    return new Rulebook(
        other,
        digest,
        topics,
        techniques,
        supports,
        sources,
        findings,
        limits,
        rules,
        instructions,
        glossary,
        practice);
  }

  /** The same rule base with other limits. */
  public Rulebook withLimits(List<Limit> changed) {
    return new Rulebook(
        version,
        digest,
        topics,
        techniques,
        supports,
        sources,
        findings,
        List.copyOf(changed),
        rules,
        instructions,
        glossary,
        practice);
  }

  /** The same rule base as a local practice has it. */
  public Rulebook under(Practice local) {
    List<Limit> moved = new ArrayList<>();
    for (Limit limit : limits) {
      Limit now = limit;
      for (LimitChange change : local.changes()) {
        now = change.before().equals(limit) ? change.after() : now;
      }
      moved.add(now);
    }
    Map<String, Source> works = new TreeMap<>(sources);
    works.put(Practice.SOURCE, local.source());
    return new Rulebook(
        version,
        digest,
        topics,
        techniques,
        supports,
        Collections.unmodifiableMap(works),
        findings,
        List.copyOf(moved),
        rules,
        instructions,
        glossary,
        local);
  }

  /** The place in its source that a limit stands at, works named there by key cited in short. */
  public String locator(Limit limit) {
    return KEY.matcher(limit.locator())
        .replaceAll(
            found -> {
              Source work = sources.get(found.group());
              return Matcher.quoteReplacement(work == null ? found.group() : work.brief());
            });
  }

  /** The keys of works that the locator of a limit names. */
  public List<String> worksNamed(Limit limit) {
    List<String> works = new ArrayList<>();
    for (String word : BETWEEN_KEYS.split(limit.locator())) {
      if (sources.containsKey(word)) {
        works.add(word);
      }
    }
    return works;
  }

  /** Whether a technique or support is first aid. */
  public boolean firstAid(String id) {
    return firstAid(techniques, id) || firstAid(supports, id);
  }

  private static boolean firstAid(List<NamedOption> all, String id) {
    for (NamedOption one : all) {
      if (one.firstAid() && one.id().equals(id)) {
        return true;
      }
    }
    return false;
  }

  public NamedOption technique(String id) {
    return named(techniques, id);
  }

  public NamedOption support(String id) {
    return named(supports, id);
  }

  private static NamedOption named(List<NamedOption> all, String id) {
    for (NamedOption one : all) {
      if (one.id().equals(id)) {
        return one;
      }
    }
    return null;
  }
}
