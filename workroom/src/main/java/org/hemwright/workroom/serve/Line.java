package org.hemwright.workroom.serve;

import java.nio.ByteBuffer;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.eclipse.jetty.websocket.api.Callback;
import org.eclipse.jetty.websocket.api.Session;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Host;
import org.hemwright.workroom.talk.Window;

/** The line to one window. */
public final class Line implements Session.Listener.AutoDemanding {
  private final Host host;
  private final Presence presence;
  private final Consumer<String> log;

  /** The window, once its host has let it in: what is asked before that waits. */
  private final CompletableFuture<Window> window = new CompletableFuture<>();

  Line(Host host, Presence presence, Consumer<String> log) {
    this.host = host;
    this.presence = presence;
    this.log = log;
  }

  @Override
  public void onWebSocketOpen(Session session) {
    presence.entered();
    host.join(frame -> send(session, frame), window::complete);
  }

  private static void send(Session session, Frame frame) {
    if (session.isOpen()) {
      session.sendBinary(frame.bytes(), Callback.NOOP);
    }
  }

  @Override
  public void onWebSocketText(String text) {
    var unused = window.thenAccept(known -> host.ask(known, text));
  }

  @Override
  public void onWebSocketBinary(ByteBuffer bytes, Callback callback) {
    log.accept("a message was refused: windows ask in text");
    callback.succeed();
  }

  @Override
  public void onWebSocketError(Throwable cause) {
    log.accept("a line broke: " + cause.getMessage());
  }

  @Override
  public void onWebSocketClose(int status, String reason, Callback callback) {
    presence.left();
    var unused = window.thenAccept(host::leave);
    callback.succeed();
  }
}
