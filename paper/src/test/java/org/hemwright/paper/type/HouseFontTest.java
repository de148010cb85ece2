package org.hemwright.paper.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TTFTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.hemwright.paper.type.HouseFont.Unfit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseFontTest {
  private static final byte[] FONT = Face.ITALIC.bytes();

  /** The font with other usage permissions: OpenType 1.9, table OS/2, fsType at offset 8. */
  private static byte[] permitting(int fsType) throws IOException {
    byte[] bytes = FONT.clone();
    try (TrueTypeFont font = Face.ITALIC.open()) {
      TTFTable table = Objects.requireNonNull(font.getTableMap().get("OS/2"));
      ByteBuffer.wrap(bytes).putShort((int) table.getOffset() + 8, (short) fsType);
    }
    return bytes;
  }

  // What each value lets be done stands in OpenType 1.9, OS/2, fsType.
  @ParameterizedTest
  @CsvSource({
    "0, true, true",
    "2, , ",
    "4, false, true",
    "8, false, true",
    "6, false, true",
    "0x100, true, false",
    "0x104, false, false",
    "0x200, , "
  })
  void theLicenceBitsSayWhatMayBeDone(String fsType, Boolean onScreens, Boolean inParts)
      throws IOException {
    HouseFont.Read read = HouseFont.read("hers.ttf", permitting(Integer.decode(fsType)));
    if (onScreens == null) {
      assertThat(read.unfit()).contains(Unfit.FORBIDDEN);
      assertThat(read.font()).isEmpty();
    } else {
      assertThat(read.unfit()).isEmpty();
      assertThat(read.font().orElseThrow().onScreens()).isEqualTo(onScreens);
      assertThat(read.font().orElseThrow().face().inParts()).isEqualTo(inParts);
    }
  }

  @Test
  void whatIsNoSoundFontIsRefused() throws IOException {
    assertThat(HouseFont.read("x", new byte[0]).unfit()).contains(Unfit.UNREADABLE);
    assertThat(HouseFont.read("x", "no font".getBytes(StandardCharsets.UTF_8)).unfit())
        .contains(Unfit.UNREADABLE);
    assertThat(HouseFont.read("x", new byte[HouseFont.MOST_BYTES + 1]).unfit())
        .contains(Unfit.LARGE);
    byte[] postScript = FONT.clone();
    System.arraycopy(new byte[] {'O', 'T', 'T', 'O'}, 0, postScript, 0, 4);
    assertThat(HouseFont.read("x", postScript).unfit()).contains(Unfit.POSTSCRIPT);
  }

  /** Cut off anywhere, a file is either refused or reads as before; it never stops the program. */
  @Test
  void aTornFileNeverStopsTheProgram() {
    for (int part = 1; part < 64; part++) {
      byte[] torn = Arrays.copyOf(FONT, FONT.length * part / 64);
      assertThat(HouseFont.read("x", torn).unfit()).as("%d of 64", part).isNotEmpty();
    }
  }

  @Test
  void aFontWithoutLettersIsNoneForWordsAndOneThatLacksSomeLeavesTheLineToOurs()
      throws IOException {
    assertThat(HouseFont.read("digits.ttf", some("0123456789")).unfit()).contains(Unfit.UNREADABLE);
    byte[] plain = some("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 .,");
    HouseFont font = HouseFont.read("plain.ttf", plain).font().orElseThrow();
    assertThat(font.face().missing("Größe 14 ½")).containsExactly("ö", "ß", "½");
    HouseType type =
        new HouseType(Optional.of(font), Optional.empty(), Optional.empty(), Optional.empty());
    assertThat(type.line("Tern Cove", 11).face()).isSameAs(font.face());
    assertThat(type.title("Tern Cove", 11).face()).isSameAs(font.face());
    assertThat(type.line("Größe", 11).face()).isSameAs(Face.REGULAR);
  }

  private static byte[] some(String letters) throws IOException {
    try (TrueTypeFont font = Face.ITALIC.open()) {
      TTFSubsetter part = new TTFSubsetter(font);
      letters.codePoints().forEach(part::add);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      part.writeToStream(bytes);
      return bytes.toByteArray();
    }
  }
}
