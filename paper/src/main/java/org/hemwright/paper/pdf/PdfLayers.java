package org.hemwright.paper.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.hemwright.paper.sheet.Layer;

/**
 * The optional content of one file (ISO 32000-2, 8.11): a group for each size and one in common,
 * and a membership for every set of sizes that share a line, which shows while any of them does.
 */
final class PdfLayers {
  static final String COMMON = "All sizes";

  private final PDOptionalContentProperties properties = new PDOptionalContentProperties();
  private final Map<Layer, PDPropertyList> known = new LinkedHashMap<>();

  PdfLayers(List<String> sizes) {
    known.put(Layer.COMMON, group(COMMON));
    for (String size : sizes) {
      known.put(Layer.of(size), group("Size " + size));
    }
    COSArray order = new COSArray();
    known.values().forEach(layer -> order.add(layer.getCOSObject()));
    configuration().setItem(COSName.ORDER, order);
  }

  private PDOptionalContentGroup group(String name) {
    PDOptionalContentGroup group = new PDOptionalContentGroup(name);
    properties.addGroup(group);
    properties.setGroupEnabled(group, true);
    return group;
  }

  private COSDictionary configuration() {
    COSDictionary all = properties.getCOSObject();
    COSDictionary shown = all.getCOSDictionary(COSName.D);
    if (shown == null) {
      throw new IllegalStateException("optional content has no default configuration");
    }
    return shown;
  }

  PDOptionalContentProperties properties() {
    return properties;
  }

  /** What to mark a layer's content with. */
  PDPropertyList of(Layer layer) {
    PDPropertyList found = known.get(layer);
    if (found == null) {
      if (layer.sizes().size() == 1) {
        throw new IllegalArgumentException("no layer was asked for size " + layer.sizes().get(0));
      }
      List<PDPropertyList> members = new ArrayList<>();
      layer.sizes().forEach(size -> members.add(of(Layer.of(size))));
      PDOptionalContentMembershipDictionary any = new PDOptionalContentMembershipDictionary();
      any.setOCGs(members);
      any.setVisibilityPolicy(COSName.getPDFName("AnyOn"));
      known.put(layer, any);
      found = any;
    }
    return found;
  }
}
