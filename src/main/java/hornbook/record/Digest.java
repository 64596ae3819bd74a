package hornbook.record;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests as the daybook writes them: {@code sha256:} and 64 digits. */
public final class Digest {
  public static final String PREFIX = "sha256:";

  private Digest() {}

  /** A fresh SHA-256. */
  public static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  /** Of all the bytes of a file. */
  public static String of(byte[] bytes) {
    return PREFIX + HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /** The 64 digits alone. */
  public static String digits(String digest) {
    return digest.substring(PREFIX.length());
  }

  /** Whether it is one, whole. */
  public static boolean whole(String digest) {
    return digest != null && digest.matches(PREFIX + "[0-9a-f]{64}");
  }
}
