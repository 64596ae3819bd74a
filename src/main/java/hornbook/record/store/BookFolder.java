package hornbook.record.store;

import hornbook.record.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names in the folder of a daybook.
 *
 * <pre>
 * README.txt               what this is, for whoever finds it without the program
 * 000012/entry.json        the entry, never changed
 * 000012/SHA256SUMS        digests of all files of the entry
 * 000012/photos/...        its pictures, named by their digests
 * last.sha256              which entry was the last, and its digest
 * lock                     held while an entry is written
 * .index                   what a list shows; made anew from the entries when it does not fit them
 * .writing-...             an entry on its way
 * </pre>
 */
public record BookFolder(Path root) {
  public static final String ENTRY = "entry.json";
  static final String SUMS = "SHA256SUMS";
  static final String PHOTOS = "photos";
  static final String LAST = "last.sha256";
  static final String README = "README.txt";
  static final String LOCK = "lock";
  static final String INDEX = ".index";
  static final String WRITING = ".writing-";

  static final int HIGHEST = 999_999_999;

  private static final int DIGITS = 6;
  private static final int MOST_DIGITS = 9;
  private static final Pattern LAST_LINE =
      Pattern.compile("([0-9a-f]{64})  (\\d{6,9})/entry\\.json\n");

  /** The last entry as it was noted. */
  record Last(int number, String digest) {}

  /** Name of the folder of an entry: six digits, more where they are needed. */
  public static String name(int number) {
    String digits = Integer.toString(number);
    return "0".repeat(Math.max(0, DIGITS - digits.length())) + digits;
  }

  /** The folder of an entry. */
  public Path entry(int number) {
    return root.resolve(name(number));
  }

  public Path entryFile(int number) {
    return root.resolve(name(number) + "/" + ENTRY);
  }

  Path at(String name) {
    return root.resolve(name);
  }

  /** The number a name in the folder stands for; 0 for any other name. */
  static int number(String name) {
    int length = name.length();
    boolean filled = length == DIGITS || length > DIGITS && name.charAt(0) != '0';
    if (!filled || length > MOST_DIGITS) {
      return 0;
    }
    int number = 0;
    for (int i = 0; i < length; i++) {
      char digit = name.charAt(i);
      if (digit < '0' || digit > '9') {
        return 0;
      }
      number = number * 10 + digit - '0';
    }
    return number;
  }

  /** All names in the folder of the book. */
  List<String> names() throws IOException {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(root)) {
      all.forEach(one -> names.add(one.getFileName().toString()));
    }
    return names;
  }

  /** Numbers that have a place in the folder, in order. */
  int[] numbers() throws IOException {
    return names().stream().mapToInt(BookFolder::number).filter(one -> one > 0).sorted().toArray();
  }

  /** The last entry as it was noted; null where nothing is noted, or not as the program does. */
  Last last() throws IOException {
    Path file = at(LAST);
    if (!plain(file)) {
      return null;
    }
    Matcher line = LAST_LINE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
    if (!line.matches() || number(line.group(2)) == 0) {
      return null;
    }
    return new Last(number(line.group(2)), Digest.PREFIX + line.group(1));
  }

  static String lastLine(int number, String digest) {
    return Digest.digits(digest) + "  " + name(number) + "/" + ENTRY + "\n";
  }

  /** Whether it is a file of its own, and no link to one elsewhere. */
  static boolean plain(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** Whether it is a folder of its own, and no link to one elsewhere. */
  static boolean folder(Path path) {
    return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
  }
}
