package hornbook.cli.base;

import hornbook.assessment.tree.Nearest;
import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * The values of an argument as words in kebab case: reads one, and names them all for the shell's
 * completion.
 */
final class WordChoices<E extends Enum<E>> implements ITypeConverter<E>, Iterable<String> {
  private final Class<E> type;

  WordChoices(Class<E> type) {
    this.type = type;
  }

  @Override
  public E convert(String word) {
    for (E constant : type.getEnumConstants()) {
      if (of(constant).equals(word) || constant instanceof Word also && also.spelt(word)) {
        return constant;
      }
    }
    List<String> all = all();
    String nearest = Nearest.of(word, all);
    throw new TypeConversionException(
        "allowed: " + String.join(", ", all) + (nearest == null ? "" : "\nnearest: " + nearest));
  }

  @Override
  public Iterator<String> iterator() {
    return all().iterator();
  }

  /** All words with bars between them. */
  String label() {
    return String.join("|", all());
  }

  private List<String> all() {
    List<String> all = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      all.add(of(constant));
    }
    return all;
  }

  private static String of(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
