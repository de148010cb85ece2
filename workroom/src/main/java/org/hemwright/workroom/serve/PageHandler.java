package org.hemwright.workroom.serve;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Checks every request at the gate, and then sends the page's files or passes the line on. */
final class PageHandler extends Handler.Wrapper {
  private final Gate gate;
  private final Supplier<String> nonces;
  private final Reception reception;
  private final Consumer<String> log;

  PageHandler(Gate gate, Supplier<String> nonces, Reception reception, Consumer<String> log) {
    this.gate = gate;
    this.nonces = nonces;
    this.reception = reception;
    this.log = log;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    String nonce = nonces.get();
    protect(response.getHeaders(), nonce);
    HttpFields headers = request.getHeaders();
    String path = request.getHttpURI().getPath();
    boolean line = path.equals("/" + gate.token() + "/line");
    Optional<String> refusal =
        gate.refusal(
            new Gate.Asked(
                request.getMethod(),
                path,
                Optional.ofNullable(headers.get(HttpHeader.HOST)),
                Optional.ofNullable(headers.get(HttpHeader.ORIGIN)),
                Optional.ofNullable(headers.get("Sec-Fetch-Site")),
                line));
    if (refusal.isPresent()) {
      log.accept("a request was refused: " + refusal.get());
      return send(response, callback, 403, new PageFiles.Sent("text/plain", new byte[0]));
    }
    if (line) {
      return super.handle(request, response, callback);
    }
    String below = path.substring(gate.token().length() + 2);
    Optional<PageFiles.Sent> file =
        below.isEmpty()
            ? Optional.of(PageFiles.page(reception.page(), nonce))
            : PageFiles.file(below);
    if (file.isEmpty()) {
      log.accept("a request was refused: the page has no such file");
      return send(response, callback, 404, new PageFiles.Sent("text/plain", new byte[0]));
    }
    return send(response, callback, 200, file.get());
  }

  private void protect(HttpFields.Mutable headers, String nonce) {
    String line = "ws://127.0.0.1:" + gate.port() + " ws://localhost:" + gate.port();
    headers.put(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self' 'nonce-"
            + nonce
            + "'; style-src 'self' 'nonce-"
            + nonce
            + "'; font-src 'self'; img-src 'self' blob: data:; connect-src 'self'"
            + " "
            + line
            + "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "no-referrer");
    headers.put("Cross-Origin-Opener-Policy", "same-origin");
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    headers.put("Cache-Control", "no-store");
  }

  private static boolean send(
      Response response, Callback callback, int status, PageFiles.Sent sent) {
    response.setStatus(status);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, sent.type());
    response.getHeaders().put(HttpHeader.CONTENT_LENGTH, sent.bytes().length);
    response.write(true, ByteBuffer.wrap(sent.bytes()), callback);
    return true;
  }
}
