package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.assessment.tree.Nearest;
import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.List;

/** One of the words of an enum. */
public record OneWord(List<Word> options) implements ScalarKind {
  @Override
  public Class<?> type() {
    return options.get(0).getClass();
  }

  @Override
  public Taken take(Scalar scalar) {
    for (Word word : options) {
      if (scalar.token() == Token.TEXT && word.spelt(scalar.text())) {
        return new Taken.Value(word);
      }
    }
    List<String> known = spellings();
    known.add(LocatedValue.UNKNOWN);
    String nearest = Nearest.of(scalar.text(), known);
    return new Taken.Refused(scalar.kind(), nearest == null ? null : written(nearest));
  }

  /** The word itself where another spelling of it was nearest. */
  private String written(String spelling) {
    return options.stream()
        .filter(option -> option.spelt(spelling))
        .map(Word::word)
        .findFirst()
        .orElse(spelling);
  }

  @Override
  public String allowed() {
    return String.join(", ", words());
  }

  @Override
  public String write(Object value) {
    return ((Word) value).word();
  }

  /** Every spelling that is read. */
  public List<String> spellings() {
    List<String> spellings = new ArrayList<>(words());
    options.forEach(option -> spellings.addAll(option.also()));
    return spellings;
  }

  /** The words as they are written, without {@code unknown}. */
  public List<String> words() {
    String[] words = new String[options.size()];
    for (int i = 0; i < words.length; i++) {
      words[i] = options.get(i).word();
    }
    return List.of(words);
  }
}
