package hornbook.assessment.field;

/**
 * A field of one assessment and what it holds.
 *
 * @param field the field's entry in the table
 * @param path where in the assessment: {@code feet[0].signs.digitalPulse}
 * @param value a word, list, Boolean, Integer, Double, String or date; null is unknown
 */
public record FieldValue(Field field, String path, Object value) {}
