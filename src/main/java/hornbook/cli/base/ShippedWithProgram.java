package hornbook.cli.base;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.load.ShippedRules;
import hornbook.rulebook.network.EngineStart;
import java.util.concurrent.CompletableFuture;

/** The rules that come with the program. */
public final class ShippedWithProgram implements RuleSource {
  private CompletableFuture<LoadedRules> ahead;

  /**
   * Begins to load the rules, and after them the engine, while the command line and the files are
   * still being read.
   */
  public void loadAhead() {
    CompletableFuture<LoadedRules> loading = new CompletableFuture<>();
    Thread loader =
        new Thread(
            () -> {
              try {
                LoadedRules rules = ShippedRules.load();
                loading.complete(rules);
                EngineStart.with(rules.book());
              } catch (Throwable fault) {
                loading.completeExceptionally(fault);
              }
            },
            "rules");
    loader.setDaemon(true);
    loader.start();
    ahead = loading;
  }

  @Override
  public Rulebook book() {
    return ahead == null ? ShippedRules.book() : ahead.join().book();
  }

  @Override
  public LoadedRules loaded() {
    return ahead == null ? ShippedRules.load() : ahead.join();
  }
}
