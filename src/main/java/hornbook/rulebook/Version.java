package hornbook.rulebook;

import java.util.Arrays;

/** Versions of a rule base: three whole numbers separated by dots. */
public final class Version {
  private Version() {}

  public static boolean known(String version) {
    return version.matches("\\d{1,4}\\.\\d{1,4}\\.\\d{1,4}");
  }

  /** Whether one is later than another; false where either is no version. */
  public static boolean later(String one, String other) {
    return known(one) && known(other) && Arrays.compare(numbers(one), numbers(other)) > 0;
  }

  private static int[] numbers(String version) {
    return Arrays.stream(version.split("\\.")).mapToInt(Integer::parseInt).toArray();
  }
}
