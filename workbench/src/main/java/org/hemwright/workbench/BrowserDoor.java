package org.hemwright.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** The door that opens in a browser: the command line knows it by this alone. */
public interface BrowserDoor {
  /**
   * Opens a folder and serves its page until the process ends or {@link Opened#close} is called.
   *
   * @param folder the pattern folder; the page where one is chosen or begun when absent
   * @param port the port to listen on; 0 for any that is free
   * @param log what happens, one sentence at a time, for who looks after the machine
   * @throws Refused where the folder cannot be opened
   */
  Opened open(Optional<Path> folder, int port, Consumer<String> log) throws IOException, Refused;

  /**
   * Opens as from an icon on the desktop: the folder that was open last, or else the page where one
   * is chosen. Waiting for it ends a while after the last page is closed.
   *
   * @param port the port to listen on; 0 for any that is free
   * @param log what happens, one sentence at a time
   */
  Opened openAtDesk(int port, Consumer<String> log) throws IOException, Refused;

  /**
   * Opens an example aside, asks for its page as a browser does and closes it again, so that
   * whatever a start needs has been loaded once. Nothing of it is left or remembered.
   */
  void warmUp() throws IOException;

  /** An open folder. */
  interface Opened extends AutoCloseable {
    /** The address of its page, with the token that lets one in. */
    String address();

    /** Waits until it is closed. */
    void await() throws InterruptedException;

    @Override
    void close();
  }

  /** Why a folder cannot be opened, and what would mend it, in one sentence. */
  final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    /** Refuses with a sentence. */
    public Refused(String sentence) {
      super(sentence);
    }

    /** The sentence. */
    public String sentence() {
      String message = getMessage();
      return message == null ? "" : message;
    }
  }
}
