package org.hemwright.workroom.serve;

import java.io.IOException;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.eclipse.jetty.websocket.server.WebSocketUpgradeHandler;
import org.hemwright.workroom.talk.Question;

/** Serves one page on the loopback address, until it is closed. */
public final class LocalServer implements AutoCloseable {
  private static final String HOST = "127.0.0.1";
  private static final int TOKEN_BYTES = 24;
  private static final int NONCE_BYTES = 18;

  private final Server server;
  private final ServerConnector connector;
  private final String token;
  private final Presence presence;

  private LocalServer(Server server, ServerConnector connector, String token, Presence presence) {
    this.server = server;
    this.connector = connector;
    this.token = token;
    this.presence = presence;
  }

  /**
   * Starts to serve.
   *
   * @param port 0 for any that is free
   * @throws IOException where the port cannot be had
   */
  public static LocalServer start(Reception reception, int port, Consumer<String> log)
      throws IOException {
    SecureRandom random = new SecureRandom();
    String token = word(random, TOKEN_BYTES);
    QueuedThreadPool threads = new QueuedThreadPool(12, 2);
    threads.setDaemon(true);
    threads.setName("workroom");
    Server server = new Server(threads);
    HttpConfiguration http = new HttpConfiguration();
    http.setSendServerVersion(false);
    ServerConnector connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
    connector.setHost(HOST);
    connector.setPort(port);
    server.addConnector(connector);
    connector.open();
    Presence presence = new Presence();
    Gate gate = new Gate(connector.getLocalPort(), token);
    PageHandler pages = new PageHandler(gate, () -> word(random, NONCE_BYTES), reception, log);
    server.setHandler(pages);
    pages.setHandler(
        WebSocketUpgradeHandler.from(
            server,
            container -> {
              container.setMaxTextMessageSize(Question.MOST);
              container.setMaxBinaryMessageSize(1024);
              container.setIdleTimeout(Duration.ZERO);
              container.addMapping(
                  "/" + token + "/line",
                  (request, response, callback) -> {
                    response.setExtensions(List.of());
                    return new Line(reception.host(), presence, log);
                  });
            }));
    try {
      server.start();
    } catch (IOException | RuntimeException fault) {
      throw fault;
    } catch (Exception fault) {
      throw new IOException("the page cannot be served", fault);
    }
    return new LocalServer(server, connector, token, presence);
  }

  private static String word(SecureRandom random, int length) {
    byte[] bytes = new byte[length];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The address of the page, token and all. */
  public String address() {
    return "http://" + HOST + ":" + connector.getLocalPort() + "/" + token + "/";
  }

  /** Waits until it is closed. */
  public void await() throws InterruptedException {
    server.join();
  }

  /**
   * Waits until the last window has been closed for a while.
   *
   * @param first how long to wait for the first window
   * @param grace how long to wait for another once the last has gone
   */
  public void awaitNobody(Duration first, Duration grace) throws InterruptedException {
    presence.awaitNobody(first, grace);
  }

  @Override
  public void close() {
    try {
      server.stop();
    } catch (Exception stuck) {
      throw new IllegalStateException("the page's server would not stop", stuck);
    }
  }
}
