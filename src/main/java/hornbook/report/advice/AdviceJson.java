package hornbook.report.advice;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.report.page.JsonText;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

/**
 * Writes advice in the format {@code hornbook-advice/1}, which {@link #SCHEMA} describes: UTF-8,
 * keys always in the same order. Lengths, weights and temperatures come in the units asked for,
 * each with its unit beside it.
 */
public final class AdviceJson {
  public static final String FORMAT = "hornbook-advice/1";

  /** Where the schema of the format lies among the program's classes. */
  public static final String SCHEMA = "/hornbook/schema/hornbook-advice-1.schema.json";

  private AdviceJson() {}

  /** One advice as one object, on many lines; the stream stays open. */
  public static void write(Advice advice, Units units, OutputStream to) throws IOException {
    write(advice, units, false, to);
  }

  /**
   * One advice as one object, on many lines; the stream stays open.
   *
   * @param brief whether only verdicts, findings and referrals are told
   */
  public static void write(Advice advice, Units units, boolean brief, OutputStream to)
      throws IOException {
    try (JsonGenerator json = JsonText.pretty(JsonText.JSON.createGenerator(to))) {
      new AdviceWriter(json, advice, units, brief).write();
      json.writeRaw('\n');
    }
  }

  /** One advice as one object, on many lines; the writer stays open. */
  public static void write(Advice advice, Units units, Writer to) throws IOException {
    try (JsonGenerator json = JsonText.pretty(JsonText.JSON.createGenerator(to))) {
      new AdviceWriter(json, advice, units).write();
      json.writeRaw('\n');
    }
  }

  /**
   * One advice as one line, ended; the stream stays open.
   *
   * @param brief whether only verdicts, findings and referrals are told
   */
  public static void writeLine(Advice advice, Units units, boolean brief, OutputStream to)
      throws IOException {
    try (JsonGenerator json = JsonText.JSON.createGenerator(to)) {
      new AdviceWriter(json, advice, units, brief).write();
      json.writeRaw('\n');
    }
  }

  /** One advice as one line, without a newline at its end. */
  public static String line(Advice advice, Units units) {
    StringWriter line = new StringWriter();
    try (JsonGenerator json = JsonText.JSON.createGenerator(line)) {
      new AdviceWriter(json, advice, units).write();
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return line.toString();
  }
}
