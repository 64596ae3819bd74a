package hornbook.record;

import java.util.regex.Pattern;

/**
 * A picture kept with an entry.
 *
 * @param file its place in the folder of the entry, {@code photos/<digits>.jpg}
 * @param digest of its bytes
 * @param name what the file was called when it was taken in, or null
 */
public record Photo(String file, String digest, String name) {
  private static final Pattern PLACE = Pattern.compile("photos/[0-9a-f]{64}(\\.[a-z0-9]{1,8})?");

  /** Whether its place is one the program gives: inside the entry, named by its digest. */
  public boolean inPlace() {
    return file != null
        && PLACE.matcher(file).matches()
        && Digest.whole(digest)
        && file.startsWith("photos/" + Digest.digits(digest));
  }
}
