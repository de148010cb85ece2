package org.hemwright.workroom.talk;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** One open page, and what each view remembers of it. Used on the room's thread only. */
public final class Window {
  private final int number;
  private final Consumer<Frame> line;
  private final Map<Class<?>, Object> kept = new HashMap<>();

  /**
   * A page that has just opened.
   *
   * @param number its own, from 1
   * @param line what is sent over it; a window that has gone away swallows it
   */
  public Window(int number, Consumer<Frame> line) {
    this.number = number;
    this.line = line;
  }

  /** Its own number. */
  public int number() {
    return number;
  }

  /** Sends something. */
  public void send(Frame frame) {
    line.accept(frame);
  }

  /** What a view remembers of this window, made when first asked for. */
  public <T> T kept(Class<T> kind, Supplier<T> first) {
    return kind.cast(kept.computeIfAbsent(kind, none -> first.get()));
  }

  /** Forgets what a view remembers of this window. */
  public void forget(Class<?> kind) {
    kept.remove(kind);
  }
}
