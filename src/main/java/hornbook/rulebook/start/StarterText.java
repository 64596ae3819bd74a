package hornbook.rulebook.start;

import java.util.Locale;

/**
 * What stands in the files of a rule that is begun: words to be replaced, in a rule that works as
 * it stands.
 *
 * @param version the version the rule comes with
 * @param reading the number the rule is about
 */
record StarterText(String id, String topic, String title, String version, StarterReading reading) {
  /** The limit the rule binds. */
  String limitId() {
    return topic + "." + id.toLowerCase(Locale.ROOT) + "." + reading.named();
  }

  private String caution() {
    return topic + "-" + id.toLowerCase(Locale.ROOT);
  }

  private String shown() {
    return title == null ? reading.title() + ", " + id : title;
  }

  String rule() {
    return """
        // Say here why: what goes wrong on a foot beyond this limit.
        // Silent when %s.
        rule "%s"
            @id(%s) @topic(%s) @basis(practice) @since(%s)
        when
            $most : Limit( id == "%s" )
            $found : Reading( what == "%s", misses( $most ) )
        then
            insert( Caution.about( "%s", $found, $most ) );
        end
        """
        .formatted(
            reading.unknown(),
            shown().replace('"', '\''),
            id,
            topic,
            version,
            limitId(),
            reading.field(),
            caution());
  }

  String says() {
    return """
        %s:
          says: "%s"
          sources: [practice]
        """
        .formatted(id, reading.says());
  }

  String limit() {
    return """
        - id: %s
          label: "%s"
          value: %d
          unit: %s
          direction: at-most
          inclusive: true
          source: practice
          locator: "agreed among ourselves"
          basis: practice
          safer: down
          step: 1
        """
        .formatted(limitId(), reading.label(), reading.limit(), reading.unit());
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
        %s# The one change that silences it: the near-miss.
        nearMiss: "%s=%s"
        # One step under the limit, on it, and one step over.
        limits:
          %s: {field: "%s", under: "%s", at: "%s", over: "%s"}
        """
        .formatted(
            id,
            shown().replace("\\", "\\\\").replace("\"", "\\\""),
            caution(),
            reading.foot(),
            reading.path(),
            reading.value(0),
            limitId(),
            reading.path(),
            reading.value(-1),
            reading.value(0),
            reading.value(1));
  }
}
