package hornbook.record.store;

import hornbook.record.Digest;
import hornbook.record.Photo;
import java.util.List;

/** The digests of an entry's files, in the form that {@code sha256sum -c} reads. */
final class Sums {
  private Sums() {}

  static String of(String entry, List<Photo> photos) {
    StringBuilder sums = new StringBuilder(line(entry, BookFolder.ENTRY));
    photos.forEach(photo -> sums.append(line(photo.digest(), photo.file())));
    return sums.toString();
  }

  private static String line(String digest, String file) {
    return Digest.digits(digest) + "  " + file + "\n";
  }
}
