package org.hemwright.workroom.talk;

import java.util.function.Consumer;

/** Who receives a page that has opened, and answers it. Any thread may call. */
public interface Host {
  /**
   * Lets a page in.
   *
   * @param line what is sent to it; a page that has gone away swallows it
   * @param opened is given its window before anything is sent
   */
  void join(Consumer<Frame> line, Consumer<Window> opened);

  /** Takes leave of a window. */
  void leave(Window window);

  /** Answers what a window asks, in its turn. */
  void ask(Window window, String text);
}
