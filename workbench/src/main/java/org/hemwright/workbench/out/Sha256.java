package org.hemwright.workbench.out;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Hashes by which a file is known again (FIPS 180-4). */
public final class Sha256 {
  private Sha256() {}

  /** 64 small hexadecimal digits. */
  public static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new AssertionError("every Java has SHA-256", impossible);
    }
  }
}
