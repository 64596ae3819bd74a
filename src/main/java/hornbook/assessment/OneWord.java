package hornbook.assessment;

import hornbook.assessment.Located.Scalar;
import hornbook.assessment.Located.Token;
import java.util.ArrayList;
import java.util.List;

/** One of the words of an enum. */
public record OneWord(Class<? extends Word> type) implements ScalarKind {
  @Override
  public Taken take(Scalar scalar) {
    for (Word word : type.getEnumConstants()) {
      if (scalar.token() == Token.TEXT && word.word().equals(scalar.text())) {
        return new Taken.Value(word);
      }
    }
    List<String> known = new ArrayList<>(words());
    known.add(Fields.UNKNOWN);
    return new Taken.Refused(scalar.kind(), allowed(), Nearest.of(scalar.text(), known));
  }

  @Override
  public String allowed() {
    return String.join(", ", words()) + ", " + Fields.UNKNOWN;
  }

  @Override
  public String write(Object value) {
    return ((Word) value).word();
  }

  /** The words as they are written, without {@code unknown}. */
  public List<String> words() {
    Word[] constants = type.getEnumConstants();
    String[] words = new String[constants.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = constants[i].word();
    }
    return List.of(words);
  }
}
