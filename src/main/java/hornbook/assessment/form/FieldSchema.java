package hornbook.assessment.form;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.Limb;
import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Day;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldGroup;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.Kind;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.field.ShortText;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.tree.LocatedValue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Writes what may stand in each kind of field in the words of JSON Schema. */
final class FieldSchema {
  private final JsonGenerator json;

  FieldSchema(JsonGenerator json) {
    this.json = json;
  }

  /** The fields of a group, and that there are no others. */
  void all(FieldHolder holder) throws IOException {
    json.writeObjectFieldStart("properties");
    for (Field field : holder.fields()) {
      json.writeObjectFieldStart(field.name());
      json.writeStringField("title", field.label());
      json.writeStringField("description", described(field));
      field(field);
      json.writeEndObject();
    }
    json.writeEndObject();
    List<String> required =
        holder.fields().stream().filter(Field::required).map(Field::name).toList();
    if (!required.isEmpty()) {
      strings("required", required);
    }
    json.writeBooleanField("additionalProperties", false);
  }

  private static String described(Field field) {
    boolean holder = field.kind() instanceof FieldHolder;
    return holder ? field.how() : field.how() + " Allowed: " + field.kind().allowed() + ".";
  }

  private void field(Field field) throws IOException {
    Kind kind = field.kind();
    if (kind instanceof FieldGroup group) {
      types("object", "string", "null");
      json.writeStringField("pattern", exactly(LocatedValue.UNKNOWN));
      all(group);
    } else if (kind instanceof FieldRows rows) {
      rows(rows, field.required());
    } else if (kind instanceof WordList list) {
      wordList(list);
    } else {
      scalar((ScalarKind) kind, field.required());
    }
  }

  private void rows(FieldRows rows, boolean required) throws IOException {
    if (required) {
      types("array");
    } else {
      types("array", "string", "null");
      String none = rows.emptyIsNone() ? "|" + WordList.NONE : "";
      json.writeStringField("pattern", exactly(LocatedValue.UNKNOWN + none));
    }
    json.writeNumberField("minItems", rows.least());
    json.writeNumberField("maxItems", rows.most());
    json.writeObjectFieldStart("items");
    types("object");
    all(rows);
    json.writeEndObject();
    if (rows == Fields.FEET) {
      eachFootOnce();
    }
  }

  private void eachFootOnce() throws IOException {
    json.writeArrayFieldStart("allOf");
    for (Limb limb : Limb.values()) {
      json.writeStartObject();
      json.writeObjectFieldStart("contains");
      types("object");
      strings("required", List.of("limb"));
      json.writeObjectFieldStart("properties");
      json.writeObjectFieldStart("limb");
      List<String> spellings = new ArrayList<>(limb.also());
      spellings.add(limb.word());
      strings("enum", spellings);
      json.writeEndObject();
      json.writeEndObject();
      json.writeEndObject();
      json.writeNumberField("minContains", 0);
      json.writeNumberField("maxContains", 1);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void wordList(WordList list) throws IOException {
    types("array", "string", "null");
    String words = String.join("|", list.each().spellings());
    json.writeStringField(
        "pattern", exactly(words + "|" + WordList.NONE + "|" + LocatedValue.UNKNOWN));
    json.writeObjectFieldStart("items");
    strings("enum", list.each().spellings());
    json.writeEndObject();
  }

  private void scalar(ScalarKind kind, boolean required) throws IOException {
    if (kind instanceof OneWord word) {
      json.writeArrayFieldStart("enum");
      choice(word.spellings(), required);
    } else if (kind instanceof Flag) {
      json.writeArrayFieldStart("enum");
      json.writeBoolean(true);
      json.writeBoolean(false);
      choice(Flag.words(), required);
    } else if (kind instanceof WholeNumber whole) {
      types("integer", "string", "null");
      json.writeStringField("pattern", exactly(LocatedValue.UNKNOWN));
      json.writeNumberField("minimum", whole.least());
      json.writeNumberField("maximum", whole.most());
    } else if (kind instanceof Amount amount) {
      types("number", "string", "null");
      String quantity = Quantity.pattern(amount.dimension());
      json.writeStringField("pattern", exactly(LocatedValue.UNKNOWN) + "|" + quantity);
      json.writeNumberField("minimum", amount.leastBare());
      json.writeNumberField("maximum", amount.mostBare());
    } else if (kind instanceof ShortText) {
      types("string", "number", "boolean", "null");
      json.writeNumberField("maxLength", ShortText.LONGEST);
      json.writeStringField("pattern", "^[^" + ShortText.UNPRINTABLE + "]*$");
    } else if (kind instanceof Day) {
      day();
    } else {
      json.writeStringField("const", kind.allowed());
    }
  }

  private void choice(List<String> words, boolean required) throws IOException {
    words(words);
    if (!required) {
      json.writeString(LocatedValue.UNKNOWN);
      json.writeNull();
    }
    json.writeEndArray();
  }

  private void day() throws IOException {
    types("string", "null");
    json.writeArrayFieldStart("anyOf");
    json.writeStartObject();
    json.writeStringField("pattern", exactly(LocatedValue.UNKNOWN));
    json.writeEndObject();
    json.writeStartObject();
    json.writeStringField("format", "date");
    json.writeStringField("pattern", Day.PATTERN);
    json.writeEndObject();
    json.writeEndArray();
  }

  void types(String... types) throws IOException {
    if (types.length == 1) {
      json.writeStringField("type", types[0]);
    } else {
      strings("type", List.of(types));
    }
  }

  void strings(String key, List<String> values) throws IOException {
    json.writeArrayFieldStart(key);
    words(values);
    json.writeEndArray();
  }

  private void words(List<String> words) throws IOException {
    for (String word : words) {
      json.writeString(word);
    }
  }

  private static String exactly(String words) {
    return "^(" + words + ")$";
  }
}
