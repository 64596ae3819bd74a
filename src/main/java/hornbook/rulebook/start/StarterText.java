package hornbook.rulebook.start;

import java.util.Locale;

/**
 * What stands in the files of a rule that is begun: words to be replaced, in a rule that works as
 * it stands.
 *
 * @param version the version the rule comes with
 */
record StarterText(String id, String topic, String title, String version) {
  /** The limit the rule binds. */
  String limitId() {
    return topic + "." + id.toLowerCase(Locale.ROOT) + ".days";
  }

  private String caution() {
    return topic + "-" + id.toLowerCase(Locale.ROOT);
  }

  private String shown() {
    return title == null ? "Too long since the last visit, " + id : title;
  }

  String rule() {
    return """
        // Say here why: what goes wrong on a foot that is left longer than this.
        // Silent when nobody noted how long ago the foot was last done.
        rule "%s"
            @id(%s) @topic(%s) @basis(practice) @since(%s)
        when
            $most : Limit( id == "%s" )
            $days : Reading( what == "shodDaysAgo", misses( $most ) )
        then
            insert( Caution.about( "%s", $days, $most ) );
        end
        """
        .formatted(shown().replace('"', '\''), id, topic, version, limitId(), caution());
  }

  String says() {
    return """
        %s:
          says: "Last done {days} ago; we let no foot go longer than {most}."
          sources: [practice]
        """
        .formatted(id);
  }

  String limit() {
    return """
        - id: %s
          label: longest a foot is left
          value: 56
          unit: days
          direction: at-most
          inclusive: true
          source: practice
          locator: "agreed among ourselves"
          basis: practice
          safer: down
          step: 1
        """
        .formatted(limitId());
  }

  String example() {
    return """
        rule: %s
        title: "%s"
        foot: left-fore
        # What the rule concludes.
        expects: {caution: %s}
        # A foot that fires the rule.
        assessment:
          format: hornbook-assessment/1
          visit: {shodDaysAgo: 60}
          feet:
            - limb: left-fore
        # The one change that silences it: the near-miss.
        nearMiss: "visit.shodDaysAgo=56"
        # One step under the limit, on it, and one step over.
        limits:
          %s: {field: "visit.shodDaysAgo", under: "55", at: "56", over: "57"}
        """
        .formatted(id, shown().replace("\\", "\\\\").replace("\"", "\\\""), caution(), limitId());
  }
}
