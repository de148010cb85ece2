package org.hemwright.workroom.keep;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What a text is known by: SHA-256 of its UTF-8, in hexadecimal. */
public final class TextHash {
  private TextHash() {}

  /** The hash of a text. */
  public static String of(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException absent) {
      throw new IllegalStateException("every Java knows SHA-256", absent);
    }
  }
}
