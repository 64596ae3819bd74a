package hornbook.assessment.field;

import hornbook.assessment.quantity.Unit;
import hornbook.assessment.word.Word;
import java.util.List;

/** How the parts of the table of fields are written down. */
final class FieldTable {
  private FieldTable() {}

  static Field word(String name, Word[] words, String label, String how) {
    return new Field(name, new OneWord(List.of(words)), label, how, false);
  }

  static Field words(String name, Word[] words, String label, String how) {
    return new Field(name, new WordList(new OneWord(List.of(words))), label, how, false);
  }

  static Field flag(String name, String label, String how) {
    return new Field(name, new Flag(), label, how, false);
  }

  static Field whole(String name, int least, int most, String unit, String label, String how) {
    return new Field(name, new WholeNumber(least, most, unit), label, how, false);
  }

  static Field amount(
      String name, Unit bare, double least, double most, double example, String label, String how) {
    return new Field(name, new Amount(bare, least, most, example), label, how, false);
  }

  static Field text(String name, String label, String how) {
    return new Field(name, new ShortText(), label, how, false);
  }

  static Field group(String name, RecordShape shape, String label, String how, List<Field> fields) {
    return new Field(name, new FieldGroup(shape, fields), label, how, false);
  }
}
