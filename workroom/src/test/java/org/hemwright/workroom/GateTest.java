package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody but the page of this machine gets in, and nothing it is sent does harm. */
class GateTest {
  @TempDir Path folder;
  private OpenFolder open;
  private URI address;

  @BeforeEach
  void start() throws Exception {
    open = OpenFolder.example(folder, "eddy-skirt");
    address = URI.create(open.address());
  }

  @AfterEach
  void end() {
    open.close();
  }

  private String host() {
    return "127.0.0.1:" + address.getPort();
  }

  /** The answer to a request, written by hand so that nothing is put right on the way. */
  private String answer(String first, String... headers) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
      socket.setSoTimeout(5000);
      String request =
          first + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
    }
  }

  private String status(String first, String... headers) throws IOException {
    String answer = answer(first, headers);
    return answer.isEmpty() ? "closed" : answer.split(" ", 3)[1];
  }

  @Test
  void itsOwnPageIsServedAndMayLoadNothingFromElsewhere() throws Exception {
    String page = answer("GET " + address.getPath(), "Host: " + host());
    assertThat(page).startsWith("HTTP/1.1 200").contains("<title>Hemwright</title>");
    String policy =
        page.lines().filter(l -> l.startsWith("Content-Security-Policy: ")).findFirst().get();
    assertThat(policy)
        .contains("default-src 'none'")
        .contains("frame-ancestors 'none'")
        .contains("base-uri 'none'")
        .contains("form-action 'none'")
        .doesNotContain("unsafe")
        .doesNotContain("*")
        .doesNotContain("https:");
    assertThat(page)
        .contains("X-Content-Type-Options: nosniff")
        .contains("Referrer-Policy: no-referrer")
        .contains("Cross-Origin-Resource-Policy: same-origin");
    assertThat(page.substring(page.indexOf("<!doctype")))
        .as("nothing is fetched from elsewhere")
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContain("src=\"//");
  }

  @Test
  void everyModuleAndLibraryOfThePageIsThere() throws Exception {
    String page = answer("GET " + address.getPath(), "Host: " + host());
    var names = java.util.regex.Pattern.compile("\\./(lib/[\\w@-]+\\.js)").matcher(page);
    int count = 0;
    while (names.find()) {
      assertThat(status("GET " + address.getPath() + names.group(1), "Host: " + host()))
          .as(names.group(1))
          .isEqualTo("200");
      count++;
    }
    assertThat(count).isEqualTo(14);
  }

  @Test
  void otherHostsAreRefused() throws Exception {
    for (String host :
        List.of(
            "example.org",
            "localhost",
            "127.0.0.1",
            "127.0.0.1:1",
            "evil.example:" + address.getPort(),
            host() + ".evil.example",
            "[::1]:" + address.getPort())) {
      assertThat(status("GET " + address.getPath(), "Host: " + host)).as(host).isIn("400", "403");
    }
    assertThat(status("GET " + address.getPath(), "X: y")).isIn("400", "403");
    assertThat(open.log()).anyMatch(line -> line.contains("the host was not this machine"));
  }

  @Test
  void otherOriginsAndOtherPagesAreRefused() throws Exception {
    for (String origin :
        List.of("http://evil.example", "null", "https://" + host(), "http://127.0.0.1:1")) {
      assertThat(status("GET " + address.getPath(), "Host: " + host(), "Origin: " + origin))
          .as(origin)
          .isEqualTo("403");
    }
    for (String site : List.of("cross-site", "same-site")) {
      assertThat(status("GET " + address.getPath(), "Host: " + host(), "Sec-Fetch-Site: " + site))
          .isEqualTo("403");
    }
    assertThat(status("GET " + address.getPath(), "Host: " + host(), "Origin: http://" + host()))
        .isEqualTo("200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/main.js", "/pattern.hem", "/TOKEN", "/token/", "/../TOKEN/"})
  void withoutTheTokenThereIsNothing(String path) throws Exception {
    String token = address.getPath().replace("/", "");
    String asked = path.replace("TOKEN", token.substring(1));
    assertThat(status("GET " + asked, "Host: " + host())).isIn("400", "403");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pattern.hem",
        "../pattern.hem",
        "%2e%2e/pattern.hem",
        "..%2fpattern.hem",
        "..%5cpattern.hem",
        "style/..%2f..%2fpattern.hem",
        "style/../../../Workroom.class",
        "lib/../main.js",
        "lib/codemirror__view.js/../../x.js",
        "lib/..%2f..%2fMETA-INF/MANIFEST.MF",
        ".hemwright/journal",
        "index.html",
        "font/bold.ttf",
        "/etc/passwd",
        "main.js%00.css",
        "main.js;x=1",
        "table//table.js",
        "a/b/c/d/e.js"
      })
  void noPathLeadsToAFile(String trick) throws Exception {
    String status = status("GET " + address.getPath() + trick, "Host: " + host());
    assertThat(status).isIn("400", "403", "404");
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "PATCH"})
  void thePageIsOnlyRead(String method) throws Exception {
    assertThat(status(method + " " + address.getPath(), "Host: " + host(), "Content-Length: 0"))
        .isIn("403", "405", "501");
  }

  @Test
  void aLineNeedsTheTokenAndThePagesOwnOrigin() throws Exception {
    String[] upgrade = {
      "Host: " + host(),
      "Upgrade: websocket",
      "Connection: Upgrade",
      "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==",
      "Sec-WebSocket-Version: 13",
      ""
    };
    for (String origin : List.of("X-None: 1", "Origin: http://evil.example", "Origin: null")) {
      upgrade[5] = origin;
      assertThat(status("GET " + address.getPath() + "line", upgrade)).as(origin).isEqualTo("403");
    }
    upgrade[5] = "Origin: http://" + host();
    assertThat(status("GET /line", upgrade)).isEqualTo("403");
  }

  @Test
  void itListensOnThisMachineAlone() throws Exception {
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress other : Collections.list(each.getInetAddresses())) {
        if (!other.isLoopbackAddress()) {
          org.assertj.core.api.Assertions.assertThatThrownBy(
                  () -> {
                    try (Socket socket = new Socket()) {
                      socket.connect(new java.net.InetSocketAddress(other, address.getPort()), 500);
                    }
                  })
              .isInstanceOf(IOException.class);
        }
      }
    }
  }

  /** A line, and what came over it. */
  private static final class Caller implements WebSocket.Listener {
    final List<String> heads = new CopyOnWriteArrayList<>();
    volatile int closed;
    private ByteBuffer whole = ByteBuffer.allocate(8 << 20);

    @Override
    public CompletionStage<?> onBinary(WebSocket socket, ByteBuffer data, boolean last) {
      whole.put(data);
      if (last) {
        whole.flip();
        int length = Integer.reverseBytes(whole.getInt());
        byte[] json = new byte[length];
        whole.get(json);
        heads.add(new String(json, StandardCharsets.UTF_8).strip());
        whole = ByteBuffer.allocate(8 << 20);
      }
      socket.request(1);
      return CompletableFuture.completedFuture("");
    }

    @Override
    public CompletionStage<?> onClose(WebSocket socket, int status, String reason) {
      closed = status;
      return CompletableFuture.completedFuture("");
    }

    String answer(int id) throws InterruptedException {
      String mark = "\"answer\":" + id;
      OnDisk.await(() -> heads.stream().anyMatch(head -> head.contains(mark)));
      return heads.stream().filter(head -> head.contains(mark)).findFirst().orElse("");
    }
  }

  private WebSocket call(Caller caller) throws Exception {
    return HttpClient.newHttpClient()
        .newWebSocketBuilder()
        .header("Origin", "http://" + host())
        .buildAsync(URI.create("ws://" + host() + address.getPath() + "line"), caller)
        .get(2, TimeUnit.MINUTES);
  }

  @Test
  void messagesThatAreNoneAreRefusedAndNothingIsLost() throws Exception {
    String before = open.document();
    Caller caller = new Caller();
    WebSocket line = call(caller);
    String[] nonsense = {
      "",
      "{",
      "[]",
      "null",
      "{\"id\":1}",
      "{\"id\":1,\"ask\":7}",
      "{\"id\":1,\"ask\":\"open the door\"}",
      "{\"id\":1,\"ask\":\"edit\"}",
      "{\"id\":1,\"ask\":\"edit\",\"file\":\"../x\",\"base\":0,\"splices\":[]}",
      "{\"id\":1,\"ask\":\"edit\",\"file\":\"pattern.hem\",\"base\":0,\"splices\":[{\"at\":-1,\"length\":5,\"text\":\"\"}]}",
      "{\"id\":1,\"ask\":\"edit\",\"file\":\"pattern.hem\",\"base\":0,\"splices\":[{\"at\":0,\"length\":99999999,\"text\":\"\"}]}",
      "{\"id\":1,\"ask\":\"edit\",\"file\":\"pattern.hem\",\"base\":0,\"splices\":[{\"at\":2147483647,\"length\":2147483647,\"text\":\"\"}]}",
      "{\"id\":1,\"ask\":\"drag\",\"way\":0,\"x\":1e999,\"y\":0}",
      "{\"id\":1,\"ask\":\"hold\",\"kind\":\"notch\",\"piece\":\"x\",\"name\":\"-1\",\"size\":99}",
      "{\"id\":1,\"ask\":\"turn\",\"name\":\"__proto__\",\"value\":0,\"size\":0}",
      "{\"id\":1,\"ask\":\"text\",\"file\":\"/etc/passwd\"}",
      "{\"a\":" + "[".repeat(5000) + "]".repeat(5000) + "}"
    };
    for (String message : nonsense) {
      line.sendText(message, true).get(2, TimeUnit.MINUTES);
    }
    line.sendText("{\"id\":99,\"ask\":\"text\",\"file\":\"pattern.hem\"}", true)
        .get(2, TimeUnit.MINUTES);
    assertThat(caller.answer(99)).contains("A flared skirt");
    assertThat(caller.heads.stream().filter(head -> head.contains("\"refused\"")).count())
        .isEqualTo(nonsense.length - 1);
    assertThat(String.join("", caller.heads)).doesNotContain("root:");
    assertThat(open.document()).isEqualTo(before);
    assertThat(open.log()).anyMatch(entry -> entry.contains("a question was refused"));
    assertThat(open.log()).noneMatch(entry -> entry.contains("fault of the program"));
  }

  @Test
  void whatIsTooLargeClosesTheLineAndNothingElse() throws Exception {
    Caller large = new Caller();
    WebSocket line = call(large);
    try {
      line.sendText("x".repeat(5 << 20), true).get(2, TimeUnit.MINUTES);
    } catch (java.util.concurrent.ExecutionException cut) {
      assertThat(cut).hasCauseInstanceOf(IOException.class);
    }
    OnDisk.await(() -> large.closed != 0 || line.isInputClosed());
    assertThat(large.closed == 1009 || line.isInputClosed()).isTrue();
    Caller next = new Caller();
    WebSocket other = call(next);
    other
        .sendText("{\"id\":5,\"ask\":\"text\",\"file\":\"pattern.hem\"}", true)
        .get(2, TimeUnit.MINUTES);
    assertThat(next.answer(5)).contains("A flared skirt");
    other.sendBinary(ByteBuffer.wrap(new byte[100]), true).get(2, TimeUnit.MINUTES);
    other
        .sendText("{\"id\":6,\"ask\":\"text\",\"file\":\"pattern.hem\"}", true)
        .get(2, TimeUnit.MINUTES);
    assertThat(next.answer(6)).contains("A flared skirt");
  }

  @Test
  void whatAPatternSaysIsNeverMarkup() throws Exception {
    open.close();
    String script = "<img src=x onerror='window.caught=1'><script>window.caught=1</script>";
    String text =
        Files.readString(folder.resolve("pattern.hem"))
            .replace("Skirt front and back, view A", script)
            .replace("\"Eddy skirt\"", "\"" + script + "\"")
            .replace("View A: waist seam to finished hem", script);
    Files.writeString(folder.resolve("pattern.hem"), text);
    open = OpenFolder.at(folder);
    try (Chromium chromium = Chromium.start()) {
      Table table = chromium.window(open.address());
      table.page().waitForSelector(".dial");
      assertThat(table.page().locator(".ledger-list").textContent()).contains("<img src=x");
      assertThat(table.page().locator("#title").textContent()).contains("<script>");
      assertThat(table.page().locator(".dials").textContent()).contains("<script>");
      assertThat(table.page().evaluate("window.caught ?? 0")).isEqualTo(0);
      assertThat(table.page().locator("#page img, #page script").count()).isZero();
      assertThat(chromium.complaints()).isEmpty();
    }
  }
}
