package hornbook.rulebook.read;

import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.YamlMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The words that lead to a word of the glossary. */
final class OtherWords {
  static final String FILE = "other-words.yaml";

  private final Map<String, String> terms = new LinkedHashMap<>();
  private YamlMap file;

  void read(YamlMap all) {
    file = all;
    for (String word : all.keys()) {
      terms.put(word, all.text(word));
    }
  }

  /** The glossary with the other words of each term; one that leads to none is a fault. */
  List<GlossaryTerm> joined(List<GlossaryTerm> glossary, FaultCollector faults) {
    List<GlossaryTerm> joined = new ArrayList<>();
    Map<String, String> left = new LinkedHashMap<>(terms);
    for (GlossaryTerm term : glossary) {
      List<String> also = new ArrayList<>(term.also());
      terms.forEach(
          (word, of) -> {
            if (term.word().equals(of)) {
              also.add(word);
              left.remove(word);
            }
          });
      GlossaryTerm whole =
          also.equals(term.also()) ? term : new GlossaryTerm(term.word(), term.says(), also);
      faults.moved(term, whole);
      joined.add(whole);
    }
    left.forEach(
        (word, of) ->
            file.fault(
                file.line(word),
                "\"" + word + "\" leads to \"" + of + "\", which the glossary does not have",
                "name a word of glossary.yaml"));
    return List.copyOf(joined);
  }
}
