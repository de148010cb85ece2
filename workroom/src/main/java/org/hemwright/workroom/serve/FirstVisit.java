package org.hemwright.workroom.serve;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.ByteBuffer;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Asks a server what a browser asks first. */
public final class FirstVisit {
  private static final int AT_MOST_SECONDS = 20;

  /** A window that opens is told more than this, one message for each view. */
  private static final int MESSAGES = 4;

  private FirstVisit() {}

  /**
   * Asks at an address for the page and some of its files, opens the line and waits for what is
   * told first.
   *
   * @param address of the page, with its token
   * @throws IOException where it is refused, or too little is told in twenty seconds
   */
  public static void to(String address) throws IOException, InterruptedException {
    URI page = URI.create(address);
    HttpClient browser = HttpClient.newHttpClient();
    for (String file : new String[] {"", "main.js", "style/paper.css"}) {
      browser.send(HttpRequest.newBuilder(page.resolve(file)).build(), BodyHandlers.discarding());
    }
    CountDownLatch told = new CountDownLatch(MESSAGES);
    try {
      browser
          .newWebSocketBuilder()
          .header("Origin", "http://" + page.getAuthority())
          .buildAsync(
              URI.create("ws://" + page.getAuthority() + page.getPath() + "line"), counts(told))
          .join();
    } catch (CompletionException refused) {
      throw new IOException("the page's line was refused", refused);
    }
    if (!told.await(AT_MOST_SECONDS, TimeUnit.SECONDS)) {
      throw new IOException("the page's line said too little");
    }
  }

  private static WebSocket.Listener counts(CountDownLatch told) {
    return new WebSocket.Listener() {
      @Override
      public @Nullable CompletionStage<?> onBinary(WebSocket line, ByteBuffer data, boolean last) {
        if (last) {
          told.countDown();
        }
        line.request(1);
        return null;
      }
    };
  }
}
