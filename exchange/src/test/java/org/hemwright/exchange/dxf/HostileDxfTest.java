package org.hemwright.exchange.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.exchange.drawing.SlippedKeys;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;

/** Whatever calls itself a DXF: read or refused within two seconds of the processor, in words. */
class HostileDxfTest {
  private static final long MOST_NANOSECONDS = 2_000_000_000L;

  private static ReadDrawing read(byte[] bytes) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long before = clock.getCurrentThreadCpuTime();
    ReadDrawing read = DxfReader.read("front.dxf", bytes);
    assertThat(clock.getCurrentThreadCpuTime() - before).isLessThan(MOST_NANOSECONDS);
    assertThat(read.drawing().isPresent() || !read.findings().isEmpty()).isTrue();
    return read;
  }

  private static ReadDrawing read(String text) {
    return read(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static String code(String text) {
    return read(text).findings().get(0).code();
  }

  private static final String START = "0\nSECTION\n2\nENTITIES\n";
  private static final String LINE = "0\nLINE\n8\n1\n10\n0\n20\n0\n11\n50\n21\n0\n";
  private static final String END = "0\nENDSEC\n0\nEOF\n";

  @Test
  void theBinaryFormIsRefused() {
    // A line of text, then the bytes 1A 00 and pairs of a code and a number in eight bytes.
    byte[] binary = new byte[200_000];
    new Random(3).nextBytes(binary);
    byte[] sentinel = "Some Binary DXF\r\n\u001a\0".getBytes(StandardCharsets.ISO_8859_1);
    System.arraycopy(sentinel, 0, binary, 0, sentinel.length);
    assertThat(read(binary).findings().get(0).code()).isEqualTo("dxf-not");
    assertThat(read(binary).drawing()).isEmpty();
  }

  @Test
  void layersWithoutEndAreReadOrRefused() {
    StringBuilder layers = new StringBuilder("0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n");
    for (int i = 0; i < 150_000; i++) {
      layers.append("0\nLAYER\n2\nlayer ").append(i).append("\n70\n0\n62\n7\n");
    }
    read(layers + "0\nENDTAB\n0\nENDSEC\n" + START + LINE + END);
    StringBuilder lines = new StringBuilder(START);
    for (int i = 0; i < 60_000; i++) {
      lines.append("0\nLINE\n8\nlayer ").append(i).append("\n10\n0\n20\n0\n11\n5\n21\n1\n");
    }
    assertThat(code(lines + END)).isEqualTo("dxf-too-large");
    assertThat(code("0\nX\n".repeat(500_000))).isEqualTo("dxf-too-large");
    assertThat(code(" ".repeat(17 << 20))).isEqualTo("dxf-too-large");
  }

  @Test
  void blocksThatHoldEachOtherHaveAnEnd() {
    String block =
        "0\nBLOCK\n2\n%s\n10\n0\n20\n0\n0\nINSERT\n2\n%s\n10\n1\n20\n1\n" + LINE + "0\nENDBLK\n";
    read(
        "0\nSECTION\n2\nBLOCKS\n"
            + block.formatted("a", "b")
            + block.formatted("b", "a")
            + "0\nENDSEC\n"
            + START
            + "0\nINSERT\n2\na\n10\n0\n20\n0\n"
            + END);
    StringBuilder growing = new StringBuilder("0\nSECTION\n2\nBLOCKS\n");
    for (int i = 0; i < 30; i++) {
      growing.append("0\nBLOCK\n2\nb").append(i).append("\n").append(LINE);
      growing.append(("0\nINSERT\n2\nb" + (i + 1) + "\n10\n1\n20\n1\n").repeat(10));
      growing.append("0\nENDBLK\n");
    }
    read(growing + "0\nENDSEC\n" + START + "0\nINSERT\n2\nb0\n10\n0\n20\n0\n" + END);
  }

  @Test
  void numbersAndTextsOutOfAllBoundsAreToldOrRead() {
    for (String number :
        new String[] {"1e308", "-1e309", "NaN", "9".repeat(500), "0x10", "", "1,5"}) {
      ReadDrawing read =
          read(START + LINE + "0\nLINE\n8\n1\n10\n" + number + "\n20\n0\n11\n5\n21\n0\n" + END);
      read.drawing()
          .ifPresent(
              drawing ->
                  drawing.lines().forEach(line -> assertThat(line.path().length()).isFinite()));
    }
    read(START + "0\nTEXT\n1\n" + "x".repeat(3_000_000) + "\n" + LINE + END);
    read(
        START
            + "0\nPOLYLINE\n8\n1\n66\n1\n"
            + "0\nVERTEX\n8\n1\n10\n1\n20\n2\n".repeat(100_000)
            + END);
    // What an XML reader would follow is nothing here.
    assertThat(code("<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><a>&x;</a>"))
        .isEqualTo("dxf-not");
  }

  @Test
  void anySlipIsToldOrRead() {
    String whole =
        """
        0
        SECTION
        2
        BLOCKS
        0
        BLOCK
        8
        1
        2
        front
        0
        POLYLINE
        8
        1
        66
        1
        70
        1
        0
        VERTEX
        8
        1
        10
        0
        20
        0
        0
        VERTEX
        8
        1
        10
        9
        20
        0
        0
        VERTEX
        8
        1
        10
        9
        20
        9
        0
        SEQEND
        8
        1
        0
        TEXT
        8
        1
        1
        Piece Name: front
        0
        ENDBLK
        0
        ENDSEC
        """
            + START
            + LINE
            + END;
    for (String slipped : SlippedKeys.in(whole, "\n0-1e8. LX", 11).toList()) {
      ReadDrawing read = DxfReader.read("f.dxf", slipped.getBytes(StandardCharsets.ISO_8859_1));
      assertThat(read.drawing().isPresent() || !read.findings().isEmpty()).as(slipped).isTrue();
      for (Finding finding : read.findings()) {
        assertThat(finding.code()).startsWith("dxf-");
      }
    }
  }
}
