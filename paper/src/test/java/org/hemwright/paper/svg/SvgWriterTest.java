package org.hemwright.paper.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.paper.TestSheets.FACTS;
import static org.hemwright.paper.TestSheets.oneOfEach;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgWriterTest {
  private static Document picture() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(SvgWriter.write(FACTS, oneOfEach(210, 297))));
  }

  @Test
  void itIsOfTrueSizeInMillimetres() throws Exception {
    Element svg = picture().getDocumentElement();
    assertThat(svg.getAttribute("width")).isEqualTo("210mm");
    assertThat(svg.getAttribute("height")).isEqualTo("297mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 -297 210 297");
    assertThat(new String(SvgWriter.write(FACTS, oneOfEach(210, 297)), StandardCharsets.UTF_8))
        .contains("d=\"M10 -20L110 -20\"");
  }

  @Test
  void groupsAreNamedAndTitled() throws Exception {
    NodeList groups = picture().getElementsByTagName("g");
    Set<String> ids = new LinkedHashSet<>();
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      if (group.hasAttribute("id")) {
        assertThat(ids.add(group.getAttribute("id"))).isTrue();
        assertThat(group.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
      }
    }
    assertThat(ids).contains("panel-size-14", "panel-size-14-16", "band-size-16", "sheet");
  }

  @Test
  void nothingReachesOutside() throws Exception {
    NodeList all = picture().getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      assertThat(element.getTagName()).isNotIn("script", "image", "use", "foreignObject", "style");
      assertThat(element.hasAttribute("href")).isFalse();
      assertThat(element.hasAttribute("xlink:href")).isFalse();
    }
  }
}
