package hornbook.rulebook.network;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * The rules of a catalogue, laid out by the engine as far as they are needed: for the first feet
 * only those within their reach, which is most of the time all a program that was just started has
 * to do; for whatever comes after all of them. Safe to use from several threads.
 */
public final class RuleNetworks {
  private final Collection<RuleEntry> rules;
  private final Map<Map<String, Limit>, Held> held = new IdentityHashMap<>();

  public RuleNetworks(Collection<RuleEntry> rules) {
    this.rules = rules;
  }

  /** Rules that are ready to fire, or soon will be. */
  public interface Ready {
    /** Everything the rules conclude from these facts, in no certain order. */
    List<Concluded> fire(Collection<? extends CitedFact> facts);
  }

  /** What has been laid out for the feet that certain limits hold for. */
  private static final class Held {
    private volatile RuleNetwork whole;
    private FutureTask<RuleNetwork> part;
  }

  /**
   * Begins to lay out the rules for feet that these limits hold for, on a thread of its own.
   *
   * @param facts those of the feet, all together; asked for only where it matters
   */
  public Ready ready(Supplier<Collection<CitedFact>> facts, Map<String, Limit> limits) {
    Held laidOut;
    synchronized (held) {
      laidOut = held.computeIfAbsent(limits, any -> new Held());
    }
    RuleNetwork whole = laidOut.whole;
    if (whole != null) {
      return whole::fire;
    }
    synchronized (laidOut) {
      if (laidOut.whole != null) {
        return laidOut.whole::fire;
      }
      List<RuleEntry> within = Reach.of(rules, facts.get());
      if (laidOut.part == null) {
        laidOut.part = new FutureTask<>(() -> new RuleNetwork(within, limits));
        Thread thread = new Thread(laidOut.part, "rules");
        thread.setDaemon(true);
        thread.start();
      } else if (!done(laidOut.part).has(within)) {
        laidOut.whole = new RuleNetwork(rules, limits);
        return laidOut.whole::fire;
      }
      FutureTask<RuleNetwork> part = laidOut.part;
      return all -> done(part).fire(all);
    }
  }

  private static RuleNetwork done(FutureTask<RuleNetwork> laying) {
    try {
      return laying.get();
    } catch (InterruptedException | ExecutionException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
