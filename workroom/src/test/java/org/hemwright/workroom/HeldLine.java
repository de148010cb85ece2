package org.hemwright.workroom;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.WebSocketFrame;
import com.microsoft.playwright.WebSocketRoute;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.hemwright.workroom.talk.Frame;

/**
 * The line from a window to its workroom. What the workroom says can be kept back and let go later,
 * as on a slow machine; the line can be broken, and a question refused. Words are passed on only
 * while the test asks something of the page, so it waits by {@link #until}.
 */
final class HeldLine {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** What is heard, in one word: what is told, or the question that is answered. */
  private record Heard(String word, ByteBuffer frame) {}

  /** A line that is up, by its two ends. */
  private record Line(WebSocketRoute window, WebSocketRoute workroom) {}

  private final Deque<Heard> kept = new ArrayDeque<>();
  private final Map<Integer, String> asked = new HashMap<>();
  private final Map<String, Integer> heard = new HashMap<>();
  private Predicate<String> keeping = word -> false;
  private String refused = "";
  private Optional<Line> line = Optional.empty();

  @SuppressWarnings("NullAway.Init")
  private Page page;

  /** Puts itself between a page and its workroom. */
  void hang(Page hung) {
    page = hung;
    page.routeWebSocket(Pattern.compile("/line$"), this::open);
  }

  private void open(WebSocketRoute route) {
    Line opened = new Line(route, route.connectToServer());
    line = Optional.of(opened);
    route.onMessage(frame -> said(opened, frame));
    opened.workroom.onMessage(
        frame -> {
          if (isUp(opened)) {
            Heard now = new Heard(word(frame.binary()), ByteBuffer.wrap(frame.binary()));
            if (keeping.test(now.word())) {
              kept.add(now);
              heard.merge(now.word(), 1, Integer::sum);
            } else {
              route.send(now.frame().array());
            }
          }
        });
  }

  private boolean isUp(Line asked) {
    return line.filter(asked::equals).isPresent();
  }

  private void said(Line on, WebSocketFrame frame) {
    JsonNode question = read(frame.text());
    String word = question.path("ask").asText();
    int id = question.path("id").asInt();
    asked.put(id, word);
    if (word.equals(refused)) {
      refused = "";
      ObjectNode no = Frame.answer().put("answer", id).put("refused", "not now");
      on.window.send(new Frame(no).bytes().array());
    } else if (isUp(on)) {
      on.workroom.send(frame.text());
    }
  }

  private String word(byte[] bytes) {
    int length = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt();
    JsonNode head = read(new String(bytes, 4, length, StandardCharsets.UTF_8));
    return head.has("tell")
        ? head.get("tell").asText()
        : "answer to " + asked.getOrDefault(head.path("answer").asInt(), "");
  }

  private static JsonNode read(String json) {
    try {
      return JSON.readTree(json);
    } catch (JsonProcessingException torn) {
      throw new IllegalStateException(torn);
    }
  }

  /** Keeps back all that the workroom says from now on. */
  void keepBack() {
    keeping = word -> true;
  }

  /** Keeps back what is told under a word, or {@code answer to} a question. */
  void keepBack(String word) {
    keeping = word::equals;
  }

  /** Waits until something is kept back. */
  void untilKept(String word) {
    until(() -> heard.getOrDefault(word, 0) > 0);
  }

  /** Lets go what is kept back, in its order, and keeps back nothing more. */
  void letGo() {
    keeping = word -> false;
    heard.clear();
    while (!kept.isEmpty()) {
      line.orElseThrow().window.send(kept.remove().frame().array());
    }
  }

  /** Breaks the line; what was kept back is lost with it. The page opens another by itself. */
  void breakOff() {
    Line gone = line.orElseThrow();
    line = Optional.empty();
    kept.clear();
    heard.clear();
    keeping = word -> false;
    gone.window.close();
    gone.workroom.close();
  }

  /** Refuses the next question of this word in the workroom's place. */
  void refuseOnce(String word) {
    refused = word;
  }

  /** Waits until something is so. */
  void until(BooleanSupplier wanted) {
    for (int i = 0; i < 3000 && !wanted.getAsBoolean(); i++) {
      page.waitForTimeout(20);
    }
  }
}
