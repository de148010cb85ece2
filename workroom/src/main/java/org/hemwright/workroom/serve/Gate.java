package org.hemwright.workroom.serve;

import java.util.Optional;
import java.util.Set;

/**
 * Who may come in: a request from this machine's own page, and nobody else.
 *
 * <p>The host must be the very address the server listens on, so that no name that points here from
 * elsewhere is taken for it; an origin, where one is given, must be the page's own; and the path
 * must begin with the token.
 *
 * @param port the port that the server listens on
 * @param token what every path begins with
 */
record Gate(int port, String token) {
  /** What a page of another origin cannot forge: the browser itself says where it asks from. */
  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

  /**
   * What is known of a request.
   *
   * @param site the browser's {@code Sec-Fetch-Site}
   * @param upgrade whether it asks for a WebSocket, which must name its origin
   */
  record Asked(
      String method,
      String path,
      Optional<String> host,
      Optional<String> origin,
      Optional<String> site,
      boolean upgrade) {}

  /** Why a request is refused, if it is. */
  Optional<String> refusal(Asked asked) {
    if (!asked.method().equals("GET") && !asked.method().equals("HEAD")) {
      return Optional.of("the page is only read; the method was " + asked.method());
    }
    String here = "127.0.0.1:" + port;
    String byName = "localhost:" + port;
    String host = asked.host().orElse("");
    if (!host.equals(here) && !host.equals(byName)) {
      return Optional.of("the host was not this machine");
    }
    if (asked.origin().isPresent() && !asked.origin().get().equals("http://" + host)) {
      return Optional.of("the origin was another page");
    }
    if (asked.upgrade() && asked.origin().isEmpty()) {
      return Optional.of("a line was asked for without an origin");
    }
    if (asked.site().isPresent() && !OWN_SITES.contains(asked.site().get())) {
      return Optional.of("another page asked");
    }
    if (!asked.path().startsWith("/" + token + "/")) {
      return Optional.of("the token was missing");
    }
    return Optional.empty();
  }
}
