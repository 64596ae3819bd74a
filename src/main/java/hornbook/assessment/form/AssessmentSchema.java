package hornbook.assessment.form;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.CaseFile;
import hornbook.assessment.tree.FileTree;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The JSON Schema (2020-12) of the assessment format, made from the table of fields, so that an
 * editor helps with a file as it is written. It cannot say all the reader checks: bounds of
 * quantities written as text, and fields that contradict each other.
 */
public final class AssessmentSchema {
  /** The name of the schema's file. */
  public static final String FILE = "hornbook-assessment-1.schema.json";

  private final JsonGenerator json;
  private final FieldSchema fields;

  private AssessmentSchema(JsonGenerator json) {
    this.json = json;
    this.fields = new FieldSchema(json);
  }

  /** Writes the schema into a folder: the build's own step. */
  public static void main(String[] folder) throws IOException {
    Path to = Path.of(folder[0]);
    Files.createDirectories(to);
    Files.writeString(to.resolve(FILE), text());
  }

  /** The schema as JSON text. */
  public static String text() {
    StringWriter text = new StringWriter();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
      new AssessmentSchema(json).file();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text + "\n";
  }

  private void file() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
    json.writeStringField("$id", "urn:hornbook:assessment:1");
    json.writeStringField("title", "Hornbook assessment, or a case file round one");
    json.writeObjectFieldStart("if");
    fields.types("object");
    fields.strings("required", List.of(FileTree.ASSESSMENT));
    json.writeEndObject();
    reference("then", "case");
    reference("else", FileTree.ASSESSMENT);
    json.writeObjectFieldStart("$defs");
    json.writeObjectFieldStart("case");
    caseFile();
    json.writeEndObject();
    json.writeObjectFieldStart(FileTree.ASSESSMENT);
    fields.types("object");
    fields.all(Fields.ASSESSMENT);
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndObject();
  }

  private void caseFile() throws IOException {
    fields.types("object");
    json.writeObjectFieldStart("properties");
    for (String key : CaseFile.KEYS) {
      if (key.equals(FileTree.ASSESSMENT)) {
        reference(key, key);
      } else {
        json.writeBooleanField(key, true);
      }
    }
    json.writeEndObject();
    json.writeBooleanField("additionalProperties", false);
  }

  private void reference(String key, String definition) throws IOException {
    json.writeObjectFieldStart(key);
    json.writeStringField("$ref", "#/$defs/" + definition);
    json.writeEndObject();
  }
}
