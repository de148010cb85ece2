package org.hemwright.workroom.talk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.hemwright.pattern.finding.Messages;

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
        throw new Unclear("question-word");
      }
      return new Question(body.path("id").asInt(0), body.path("ask").asText(), body);
    } catch (JsonProcessingException unreadable) {
      throw new Unclear("question-json");
    }
  }

  /** A text that the question must bring. */
  public String text(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.isTextual()) {
      throw new Unclear("needs-text", word, field);
    }
    return value.asText();
  }

  /** A whole number that the question must bring. */
  public int whole(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.canConvertToInt() || !value.isIntegralNumber()) {
      throw new Unclear("needs-whole", word, field);
    }
    return value.asInt();
  }

  /** A finite number that the question must bring. */
  public double number(String field) throws Unclear {
    JsonNode value = body.path(field);
    if (!value.isNumber() || !Double.isFinite(value.asDouble())) {
      throw new Unclear("needs-number", word, field);
    }
    return value.asDouble();
  }

  /** Says that a question could not be understood; nothing was changed by it. */
  public static final class Unclear extends Exception {
    private static final long serialVersionUID = 1L;
    private static final Messages SENTENCES = Messages.beside(Question.class, "unclear.properties");

    /**
     * With the reason, for the log and the window.
     *
     * @param key of a sentence in {@code unclear.properties}
     * @param of what it is about, in the order of its places
     */
    public Unclear(String key, Object... of) {
      super(sentence(key, of));
    }

    /** A sentence of the file. */
    public static String sentence(String key, Object... of) {
      String sentence = SENTENCES.sentences().getOrDefault(key, key);
      for (int i = 0; i < of.length; i++) {
        sentence = sentence.replace("{" + i + "}", String.valueOf(of[i]));
      }
      return sentence;
    }

    /** The reason. */
    public String reason() {
      String message = getMessage();
      return message == null ? "" : message;
    }
  }
}
