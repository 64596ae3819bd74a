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
      if (scalar.token() == Token.TEXT && word.word().equals(scalar.text())) {
        return new Taken.Value(word);
      }
    }
    List<String> known = new ArrayList<>(words());
    known.add(LocatedValue.UNKNOWN);
    return new Taken.Refused(scalar.kind(), Nearest.of(scalar.text(), known));
  }

  @Override
  public String allowed() {
    return String.join(", ", words());
  }

  @Override
  public String write(Object value) {
    return ((Word) value).word();
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
