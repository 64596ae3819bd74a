package hornbook.report.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.quantity.Units;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A rule's page is headed by its weakest ground, as reasons in an advice are. */
class RuleGroundTest {
  private static final Rulebook BOOK = Shipped.BOOK;
  private static final RulePage PAGE = new RulePage(BOOK, Units.MM);

  private static String heading(String rule) {
    String page = PAGE.text(BOOK.rules().get(rule), null);
    return page.substring(0, page.indexOf("Says")).replace("\n", " ");
  }

  @Test
  void a_published_rule_that_binds_a_remembered_limit_is_headed_memory() {
    assertThat(BOOK.rules().get("O009").basis()).isEqualTo(Basis.PUBLISHED);
    assertThat(heading("O009")).contains("basis: memory;");
  }

  @Test
  void a_published_rule_that_binds_no_limit_is_headed_published() {
    assertThat(heading("N021")).contains("basis: published;");
  }

  @Test
  void no_page_is_headed_better_than_a_limit_it_shows() {
    for (RuleEntry rule : BOOK.rules().values()) {
      for (Limit limit : BOOK.limits()) {
        if (rule.limits().anyMatch(limit.id()::equals)) {
          String headed = heading(rule.id()).replaceAll(".*basis: (\\w+);.*", "$1");
          assertThat(Basis.valueOf(headed.toUpperCase(Locale.ROOT)))
              .as(rule.id() + " on " + limit.id())
              .isGreaterThanOrEqualTo(limit.basis());
        }
      }
    }
  }
}
