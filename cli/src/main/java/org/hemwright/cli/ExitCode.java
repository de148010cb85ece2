package org.hemwright.cli;

/** How a command ended, for scripts. */
final class ExitCode {
  static final int ALL_WELL = 0;
  static final int CHECK_FAILS = 1;
  static final int INPUT_WRONG = 2;
  static final int PROGRAM_AT_FAULT = 3;

  private ExitCode() {}
}
