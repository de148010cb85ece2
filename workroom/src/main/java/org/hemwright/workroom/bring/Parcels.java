package org.hemwright.workroom.bring;

import java.io.ByteArrayOutputStream;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Files that windows send, in parts since a question is short; each window's last is held. */
public final class Parcels implements View {
  private final Map<Window, Parcel> held = new HashMap<>();

  /** A file on its way. */
  private static final class Parcel {
    private final String name;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private boolean whole;

    Parcel(String name) {
      this.name = name;
    }
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of("parcel", this::parcel);
  }

  @Override
  public void closed(Room room, Window window) {
    held.remove(window);
  }

  /**
   * {@code {"ask": "parcel", "name", "at", "of", "bytes": base64}}: a part of a file, from its byte
   * {@code at} on; of all of them there are {@code of}. The answer has {@code got}.
   */
  private Frame parcel(Room room, Window window, Question question) throws Question.Unclear {
    int at = question.whole("at");
    int of = question.whole("of");
    if (of < 0 || of > PatternFolder.MOST_BYTES) {
      return new Frame(Frame.answer().put("large", PatternFolder.MOST_BYTES >> 20));
    }
    byte[] part;
    try {
      part = Base64.getDecoder().decode(question.text("bytes"));
    } catch (IllegalArgumentException other) {
      throw new Question.Unclear("part-file-base");
    }
    Parcel parcel = at == 0 ? new Parcel(question.text("name")) : held.get(window);
    if (parcel == null || parcel.bytes.size() != at || at + part.length > of) {
      throw new Question.Unclear("parts-file-follow-one");
    }
    parcel.bytes.writeBytes(part);
    parcel.whole = parcel.bytes.size() == of;
    held.put(window, parcel);
    return new Frame(Frame.answer().put("got", parcel.bytes.size()));
  }

  /** Holds a file that was made here as if a window had sent it. */
  void hold(Window window, String name, byte[] bytes) {
    Parcel parcel = new Parcel(name);
    parcel.bytes.writeBytes(bytes);
    parcel.whole = true;
    held.put(window, parcel);
  }

  /** The name of the file that a window has sent whole. */
  Optional<String> name(Window window) {
    return whole(window).map(parcel -> parcel.name);
  }

  /** What it holds. */
  Optional<byte[]> bytes(Window window) {
    return whole(window).map(parcel -> parcel.bytes.toByteArray());
  }

  private Optional<Parcel> whole(Window window) {
    return Optional.ofNullable(held.get(window)).filter(parcel -> parcel.whole);
  }
}
