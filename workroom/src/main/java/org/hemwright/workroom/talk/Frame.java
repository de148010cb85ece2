package org.hemwright.workroom.talk;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * What the server says at once: a head in JSON, and numbers.
 *
 * <p>In bytes, little-endian: the head's length (4 bytes), the head in UTF-8 filled up with blanks
 * to a multiple of 4, then the numbers, 4 bytes each (IEEE 754, single: 0.0001 mm at two metres,
 * for drawing only).
 *
 * @param head {@code {"answer": id, ...}} or {@code {"tell": what, ...}}
 * @param numbers as the head says; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent")
public record Frame(ObjectNode head, float[] numbers) {
  private static final float[] NONE = new float[0];

  /** A frame without numbers. */
  public Frame(ObjectNode head) {
    this(head, NONE);
  }

  /** A head that tells of something unasked. */
  public static ObjectNode tell(String what) {
    return JsonNodeFactory.instance.objectNode().put("tell", what);
  }

  /** An empty head, to be an answer. */
  public static ObjectNode answer() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** As it is sent. */
  public ByteBuffer bytes() {
    byte[] json = head.toString().getBytes(StandardCharsets.UTF_8);
    int padded = (json.length + 3) / 4 * 4;
    ByteBuffer bytes =
        ByteBuffer.allocate(4 + padded + 4 * numbers.length).order(ByteOrder.LITTLE_ENDIAN);
    bytes.putInt(padded).put(json);
    while (bytes.position() < 4 + padded) {
      bytes.put((byte) ' ');
    }
    bytes.asFloatBuffer().put(numbers);
    return bytes.rewind();
  }
}
