package org.hemwright.workbench;

/** What the program says of itself. */
public final class Program {
  /** Its version, as in the POM. */
  public static final String VERSION = "0.1.0";

  private Program() {}
}
