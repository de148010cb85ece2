package org.hemwright.exchange.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/**
 * Files made to harm are refused in a clear word within two seconds, as issue 7 asks. The entity
 * bomb is the one known as "billion laughs" (CVE-2003-1564); external entities are OWASP's XXE.
 */
class HostileDrawingsTest {
  private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1mm\">";

  /** The limit is held against the time of the processor, which a busy machine does not change. */
  private static final long MOST_NANOSECONDS = 2_000_000_000L;

  private static ReadDrawing read(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long before = clock.getCurrentThreadCpuTime();
    ReadDrawing read =
        assertTimeout(Duration.ofSeconds(60), () -> DrawingReader.read("front.svg", bytes));
    assertThat(clock.getCurrentThreadCpuTime() - before)
        .as("the time that %d bytes took", bytes.length)
        .isLessThan(MOST_NANOSECONDS);
    return read;
  }

  private static List<String> told(String text) {
    Wording wording = Wording.of(DrawingReader.messages(), Wording.patternMessages());
    return read(text).findings().stream()
        .map(finding -> wording.message(finding) + " " + wording.mend(finding))
        .toList();
  }

  private static String code(String text) {
    ReadDrawing read = read(text);
    assertThat(read.drawing()).isEmpty();
    return read.findings().get(0).code();
  }

  @Test
  void entityBombsAreRefused() {
    StringBuilder bomb =
        new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a0 \"ha\">");
    for (int i = 1; i < 10; i++) {
      bomb.append("<!ENTITY a%d \"".formatted(i))
          .append(("&a" + (i - 1) + ";").repeat(10))
          .append("\">");
    }
    bomb.append("]><svg xmlns=\"http://www.w3.org/2000/svg\"><text>&a9;</text></svg>");
    assertThat(told(bomb.toString()))
        .containsExactly(
            "The drawing defines entities, through which a file can grow or reach others, and was"
                + " not read. Save it again as plain SVG, without the means to edit it further in"
                + " its own program.");
  }

  @Test
  void nothingOutsideTheFileIsReached() {
    assertThat(
            code("<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>" + SVG + "&x;</svg>"))
        .isEqualTo("drawing-entities");
    assertThat(code("<!DOCTYPE svg SYSTEM \"http://127.0.0.1:1/x.dtd\">" + SVG + "&x;</svg>"))
        .isIn("drawing-broken", "drawing-entities");
    assertThat(code(SVG + "<use href=\"other.svg#a\"/></svg>")).isEqualTo("drawing-outside");
    assertThat(code(SVG + "<style>@import url(http://example.org/a.css);</style></svg>"))
        .isEqualTo("drawing-outside");
    assertThat(code("<?xml-stylesheet href=\"a.css\"?>" + SVG + "</svg>"))
        .isEqualTo("drawing-outside");
    assertThat(told(SVG + "<use href=\"https://example.org/a.svg#b\"/></svg>"))
        .containsExactly(
            "The drawing refers to https://example.org/a.svg#b outside itself, and nothing outside"
                + " the pattern folder is read. Copy what it refers to into the drawing, and save"
                + " it as plain SVG.");
  }

  @Test
  void copiesThatHoldThemselvesAreRefused() {
    assertThat(told(SVG + "<g id=\"a\"><use href=\"#a\"/></g></svg>"))
        .containsExactly(
            "A copy of “a” is part of “a” itself, so the drawing has no end. Turn the copies into"
                + " lines of their own and save it again.");
    assertThat(
            code(
                SVG
                    + "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><use href=\"#c\"/></g>"
                    + "<g id=\"c\"><use href=\"#a\"/></g></svg>"))
        .isEqualTo("drawing-use-ring");
  }

  @Test
  void copiesOfCopiesThatGrowAreRefused() {
    StringBuilder text = new StringBuilder(SVG + "<g id=\"a0\"><path d=\"M0 0L1 1\"/></g>");
    for (int i = 1; i < 12; i++) {
      text.append("<g id=\"a%d\">".formatted(i))
          .append("<use href=\"#a%d\"/>".formatted(i - 1).repeat(10))
          .append("</g>");
    }
    assertThat(code(text + "</svg>")).isEqualTo("drawing-too-many");
  }

  @Test
  void hugeFilesAreRefused() {
    assertThat(code("<svg>" + " ".repeat(DrawingReader.MOST_BYTES))).isEqualTo("drawing-too-large");
    assertThat(code(SVG + "<g>".repeat(150) + "</g>".repeat(150) + "</svg>"))
        .isEqualTo("drawing-too-deep");
    assertThat(code(SVG + "<g/>".repeat(150_000) + "</svg>")).isEqualTo("drawing-too-many");
    assertThat(code(SVG + "<path d=\"M0 0" + "h1".repeat(500_000) + "\"/></svg>"))
        .isEqualTo("drawing-too-many");
    String rules = "<style>" + ".a,.b,.c{display:none} ".repeat(100_000) + "</style>";
    told(SVG + rules + "<g class=\"z\"/>".repeat(49_000) + "</svg>");
    told(SVG + "<style>" + "x".repeat(4_000_000) + "</style></svg>");
    told(SVG + "<style>" + "/*".repeat(2_000_000) + "</style></svg>");
    told(SVG + "<path transform=\"" + "rotate(1)".repeat(200_000) + "\" d=\"M0 0\"/></svg>");
  }

  /** Chains of copies, as deep as they come: told or read, never out of stack or out of time. */
  @Test
  void longChainsOfCopiesAreToldOrRead() {
    StringBuilder chain = new StringBuilder(SVG + "<defs><path id=\"a0\" d=\"M0 0L1 1\"/>");
    for (int i = 1; i < 30_000; i++) {
      chain.append("<use id=\"a%d\" href=\"#a%d\"/>".formatted(i, i - 1));
    }
    assertThat(code(chain + "</defs><use href=\"#a29999\"/></svg>")).isEqualTo("drawing-too-deep");
    StringBuilder symbols = new StringBuilder(SVG);
    for (int i = 0; i < 12; i++) {
      symbols
          .append("<symbol id=\"s%d\" viewBox=\"0 0 1 1\">".formatted(i))
          .append("<use href=\"#s%d\" width=\"50%%\"/>".formatted(i + 1).repeat(8))
          .append("</symbol>");
    }
    assertThat(
            code(
                symbols
                    + "<symbol id=\"s12\"><rect width=\"1\" height=\"1\"/></symbol>"
                    + "<use href=\"#s0\"/></svg>"))
        .isEqualTo("drawing-too-many");
    StringBuilder drawings = new StringBuilder();
    for (int i = 0; i < 90; i++) {
      drawings.append("<svg x=\"10%\" width=\"1e30%\" height=\"1\" viewBox=\"0 0 1e-30 1\">");
    }
    ReadDrawing read =
        read(SVG + drawings + "<line x2=\"100%\"/>" + "</svg>".repeat(90) + "</svg>");
    assertThat(read.drawing().isPresent() || !read.findings().isEmpty()).isTrue();
  }

  /** Ways round the words that are looked for; SVG 2 and CSS Syntax 3 (escapes, comments). */
  @Test
  void referencesInDisguiseAreRefusedOrLeftAlone() {
    for (String sheet :
        new String[] {
          "@import 'a.css';",
          "@IMPORT \"http://example.org/a.css\";",
          "/* */@import/**/url(a.css);",
          "@\\69mport url(a.css);",
          ".a{fill:red}@import url(data:text/css,.a{});"
        }) {
      assertThat(code(SVG + "<style>" + sheet + "</style></svg>"))
          .as(sheet)
          .isEqualTo("drawing-outside");
      assertThat(code(SVG + "<style><![CDATA[" + sheet + "]]></style></svg>"))
          .as(sheet)
          .isEqualTo("drawing-outside");
    }
    assertThat(code(SVG + "<use href=\"data:image/svg+xml,%3Csvg/%3E#a\"/></svg>"))
        .isEqualTo("drawing-outside");
    assertThat(
            code(
                "<svg xmlns=\"http://www.w3.org/2000/svg\""
                    + " xmlns:x=\"http://www.w3.org/1999/xlink\"><use"
                    + " x:href=\"file:///etc/passwd#a\"/></svg>"))
        .isEqualTo("drawing-outside");
    // Nothing is fetched for a picture, a script, a frame or words of another kind: they are
    // listed.
    ReadDrawing read =
        read(
            SVG
                + "<image href=\"file:///etc/passwd\"/><image"
                + " href=\"data:image/png;base64,AAAA\"/><script"
                + " href=\"http://example.org/a.js\">while(true){}</script><foreignObject><iframe"
                + " src=\"http://example.org\"/></foreignObject><include"
                + " xmlns=\"http://www.w3.org/2001/XInclude\" href=\"/etc/passwd\"/><g"
                + " style=\"fill:url(http://example.org/a.svg#b)\"><path id=\"front\" d=\"M0"
                + " 0h5v5z\" onclick=\"alert(1)\"/></g></svg>");
    assertThat(read.findings()).isEmpty();
    assertThat(read.drawing().orElseThrow().lines()).hasSize(1);
    assertThat(read.drawing().orElseThrow().unread()).contains("image", "foreignObject");
  }

  /** Numbers at and past the ends of what a number holds. */
  @Test
  void giantNumbersAreToldOrRead() {
    for (String number :
        new String[] {
          "1e308", "-1e308", "1e309", "9".repeat(400), "1e-400", "0." + "0".repeat(5000)
        }) {
      for (String form :
          new String[] {
            "<path d=\"M0 0L%s 1L1 1Z\"/>",
            "<path d=\"M0 0A%s 1 0 0 1 5 5Z\"/>",
            "<path d=\"M0 0c%s 1 2 3 4 5Z\"/>",
            "<rect width=\"%s\" height=\"1\" rx=\"50%%\"/>",
            "<ellipse rx=\"%s\" ry=\"1\"/>",
            "<circle r=\"%s%%\"/>",
            "<g transform=\"scale(%s)\"><path d=\"M0 0L1 1\"/></g>",
            "<g transform=\"rotate(%s)\"><path d=\"M0 0L1 1\"/></g>",
            "<g transform=\"skewX(%s)\"><path d=\"M0 0L1 1\"/></g>",
            "<svg viewBox=\"0 0 %s 1\" width=\"1\" height=\"1\"><path d=\"M0 0L1 1\"/></svg>",
            "<polygon points=\"0,0 %s,1 1,1\"/>"
          }) {
        ReadDrawing read = read(SVG + form.formatted(number) + "</svg>");
        assertThat(read.drawing().isPresent() || !read.findings().isEmpty())
            .as(form + " " + number.length())
            .isTrue();
        read.drawing()
            .ifPresent(
                drawing ->
                    drawing
                        .lines()
                        .forEach(
                            line -> {
                              assertThat(line.path().length()).as(form).isFinite();
                              assertThat(line.middle().x()).as(form).isFinite();
                            }));
      }
    }
  }

  /** A choice between languages shows one drawing, a width in per cent is of what it lies in. */
  @Test
  void percentagesNestAndAChoiceIsRead() {
    ReadDrawing read =
        read(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" height=\"100mm\" viewBox=\"0"
                + " 0 200 100\"><svg x=\"10%\" y=\"10%\" width=\"50%\" height=\"50%\"><svg"
                + " width=\"50%\" height=\"50%\" viewBox=\"0 0 10 10\""
                + " preserveAspectRatio=\"none\"><line id=\"a\" x1=\"0\" y1=\"0\" x2=\"100%\""
                + " y2=\"0\"/></svg></svg></svg>");
    var line = read.drawing().orElseThrow().lines().get(0).path();
    assertThat(line.start().x()).isEqualTo(20, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(line.start().y()).isEqualTo(-10, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(line.length()).isEqualTo(50, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void whatIsNoDrawingIsTold() {
    assertThat(code("")).isEqualTo("drawing-broken");
    assertThat(code("<html/>")).isEqualTo("drawing-not-svg");
    assertThat(code(SVG)).isEqualTo("drawing-broken");
    assertThat(code(SVG + "<g transform=\"wobble(3)\"/></svg>")).isEqualTo("drawing-transform");
    assertThat(code(SVG + "<rect width=\"3 elle\" height=\"2\"/></svg>"))
        .isEqualTo("drawing-length");
    assertThat(code(SVG + "<path d=\"M1e300 0L1e308 1e308\"/></svg>"))
        .isEqualTo("drawing-broken-line");
  }

  /** Any slip of a key gives a drawing or a finding, never anything else. */
  @Test
  void anySlipIsToldOrRead() {
    String whole =
        SVG
            + "<defs><symbol id=\"s\" viewBox=\"0 0 2 2\"><path d=\"M0 0q1 1 2 0t1 1a1 2 30 01 3"
            + " 4z\"/></symbol></defs><use href=\"#s\" width=\"3\" height=\"3\""
            + " transform=\"rotate(4 5 6) scale(2)\"/><style>.x{display:none}</style></svg>";
    for (String slipped : SlippedKeys.in(whole, "<>\"'#0-.eMZa &;", 7).toList()) {
      ReadDrawing read = DrawingReader.read("f.svg", slipped.getBytes(StandardCharsets.UTF_8));
      assertThat(read.drawing().isPresent() || !read.findings().isEmpty()).isTrue();
      for (Finding finding : read.findings()) {
        assertThat(Wording.of(DrawingReader.messages()).message(finding)).isNotBlank();
      }
    }
  }
}
