package hornbook.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.ScalarKind;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Items;
import hornbook.assessment.tree.LocatedValue.Scalar;
import java.math.BigDecimal;
import java.util.Locale;

/**
 * An assessment as JSON, as it was written: every field in its own unit, words in their usual
 * spelling.
 */
public final class AssessmentTree {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private AssessmentTree() {}

  public static JsonNode of(LocatedValue tree) {
    if (tree instanceof Group group) {
      ObjectNode node = NODES.objectNode();
      group.members().forEach((key, member) -> node.set(key, of(member.value())));
      return node;
    }
    if (tree instanceof Items list) {
      ArrayNode node = NODES.arrayNode();
      list.items().forEach(item -> node.add(of(item)));
      return node;
    }
    return scalar((Scalar) tree);
  }

  private static JsonNode scalar(Scalar scalar) {
    String text = scalar.text();
    return switch (scalar.token()) {
      case TEXT -> NODES.textNode(usual(scalar));
      case NUMBER -> DecimalNode.valueOf(new BigDecimal(text));
      case FLAG -> NODES.booleanNode(text.toLowerCase(Locale.ROOT).equals("true"));
      case NOTHING -> NODES.nullNode();
    };
  }

  /** The word itself for another spelling of it: {@code lateral} for {@code outer}. */
  private static String usual(Scalar scalar) {
    Field field = scalar.unknown() ? null : Fields.at(scalar.path());
    if (field != null
        && field.kind() instanceof OneWord words
        && words.take(scalar) instanceof ScalarKind.Taken.Value known) {
      return words.write(known.value());
    }
    return scalar.text();
  }

  /** Bytes that the reader of assessments takes. */
  public static byte[] bytes(JsonNode assessment) {
    try {
      return new ObjectMapper().writeValueAsBytes(assessment);
    } catch (JsonProcessingException never) {
      throw new IllegalStateException(never);
    }
  }
}
