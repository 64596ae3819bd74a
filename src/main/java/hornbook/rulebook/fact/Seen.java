package hornbook.rulebook.fact;

import org.kie.api.definition.type.ClassReactive;

/**
 * One word that was observed, for the foot or the horse. {@code what} is the field's own name in
 * the assessment, {@code word} the word written there, with {@code yes} and {@code no} for true and
 * false; {@code field} is the path in the file. What was not looked at makes no fact at all.
 */
@ClassReactive
public record Seen(String what, String word, String field) implements CitedFact {}
