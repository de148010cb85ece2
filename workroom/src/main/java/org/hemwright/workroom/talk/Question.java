package org.hemwright.workroom.talk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * What a window asks.
 *
 * @param id the window's own number for it, which the answer bears
 * @param word what is asked
 * @param body all of it
 */
public record Question(int id, String word, JsonNode body) {
  /** No question is longer (UTF-16 units). */
  public static final int MOST = 4 << 20;

  private static final ObjectMapper JSON =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(20)
                          .maxStringLength(MOST)
                          .build())
                  .build())
          .build();

  /**
   * Reads a question.
   *
   * @throws Unclear where it is none
   */
  public static Question read(String text) throws Unclear {
    try {
      JsonNode body = JSON.readTree(text);
      if (body == null || !body.isObject() || !body.path("ask").isTextual()) {
        throw new Unclear("a question is an object with a word to ask");
      }
      return new Question(body.path("id").asInt(0), body.path("ask").asText(), body);
    } catch (JsonProcessingException unreadable) {
      throw new Unclear("a question is JSON");
    }
  }

  /** A text that the question must bring. */
  public String text(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.isTextual()) {
      throw new Unclear("'" + word + "' needs the text '" + field + "'");
    }
    return value.asText();
  }

  /** A whole number that the question must bring. */
  public int whole(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.canConvertToInt() || !value.isIntegralNumber()) {
      throw new Unclear("'" + word + "' needs the whole number '" + field + "'");
    }
    return value.asInt();
  }

  /** A finite number that the question must bring. */
  public double number(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.isNumber() || !Double.isFinite(value.asDouble())) {
      throw new Unclear("'" + word + "' needs the number '" + field + "'");
    }
    return value.asDouble();
  }

  /** Says that a question could not be understood; nothing was changed by it. */
  public static final class Unclear extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the reason, for the log and the window. */
    public Unclear(String reason) {
      super(reason);
    }

    /** The reason. */
    public String reason() {
      String message = getMessage();
      return message == null ? "" : message;
    }
  }
}
