package org.hemwright.paper.type;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.jspecify.annotations.Nullable;

/**
 * How much nearer two neighbouring glyphs stand than their widths say: the pair adjustments of the
 * font's {@code kern} feature, as OpenType 1.9 lays them down (ISO/IEC 14496-22, table GPOS, lookup
 * type 2, also inside type 9).
 */
final class PairKerning {
  private static final int PAIRS = 2;
  private static final int EXTENSION = 9;

  private final List<Subtable> subtables;

  private PairKerning(List<Subtable> subtables) {
    this.subtables = subtables;
  }

  /** The kerning of a font; none where it has no GPOS table. */
  static PairKerning of(TrueTypeFont font) throws IOException {
    TTFTable table = font.getTableMap().get("GPOS");
    List<Subtable> found = new ArrayList<>();
    if (table != null) {
      ByteBuffer gpos = ByteBuffer.wrap(font.getTableBytes(table));
      int features = u16(gpos, 6);
      int lookups = u16(gpos, 8);
      List<Integer> taken = new ArrayList<>();
      for (int i = 0; i < u16(gpos, features); i++) {
        int record = features + 2 + 6 * i;
        if (gpos.getInt(record) == 0x6B65726E) {
          int feature = features + u16(gpos, record + 4);
          for (int k = 0; k < u16(gpos, feature + 2); k++) {
            int lookup = u16(gpos, feature + 4 + 2 * k);
            if (!taken.contains(lookup)) {
              taken.add(lookup);
            }
          }
        }
      }
      for (int lookup : taken) {
        add(gpos, lookups + u16(gpos, lookups + 2 + 2 * lookup), found);
      }
    }
    return new PairKerning(List.copyOf(found));
  }

  private static void add(ByteBuffer gpos, int lookup, List<Subtable> found) {
    int type = u16(gpos, lookup);
    for (int i = 0; i < u16(gpos, lookup + 4); i++) {
      int at = lookup + u16(gpos, lookup + 6 + 2 * i);
      int kind = type;
      if (type == EXTENSION) {
        kind = u16(gpos, at + 2);
        at += gpos.getInt(at + 4);
      }
      if (kind == PAIRS) {
        found.add(new Subtable(gpos, at));
      }
    }
  }

  /** What to add to the first glyph's advance before the second, in font units. */
  int between(int first, int second) {
    for (Subtable subtable : subtables) {
      Integer value = subtable.value(first, second);
      if (value != null) {
        return value;
      }
    }
    return 0;
  }

  private static int u16(ByteBuffer bytes, int at) {
    return bytes.getShort(at) & 0xFFFF;
  }

  /** Which glyphs a table speaks of, and their places in it. */
  private static Map<Integer, Integer> coverage(ByteBuffer bytes, int at) {
    Map<Integer, Integer> places = new HashMap<>();
    int count = u16(bytes, at + 2);
    for (int i = 0; i < count; i++) {
      if (u16(bytes, at) == 1) {
        places.put(u16(bytes, at + 4 + 2 * i), i);
      } else {
        int range = at + 4 + 6 * i;
        for (int glyph = u16(bytes, range); glyph <= u16(bytes, range + 2); glyph++) {
          places.put(glyph, u16(bytes, range + 4) + glyph - u16(bytes, range));
        }
      }
    }
    return places;
  }

  private static Map<Integer, Integer> classes(ByteBuffer bytes, int at) {
    Map<Integer, Integer> known = new HashMap<>();
    if (u16(bytes, at) == 1) {
      for (int i = 0; i < u16(bytes, at + 4); i++) {
        known.put(u16(bytes, at + 2) + i, u16(bytes, at + 6 + 2 * i));
      }
    } else {
      for (int i = 0; i < u16(bytes, at + 2); i++) {
        int range = at + 4 + 6 * i;
        for (int glyph = u16(bytes, range); glyph <= u16(bytes, range + 2); glyph++) {
          known.put(glyph, u16(bytes, range + 4));
        }
      }
    }
    return known;
  }

  /** Single pairs (format 1) or classes of glyphs (format 2). */
  private static final class Subtable {
    private final Map<Long, Integer> pairs = new HashMap<>();
    private final Map<Integer, Integer> covered;
    private Map<Integer, Integer> firstClasses = Map.of();
    private Map<Integer, Integer> secondClasses = Map.of();
    private int[][] byClass = {};

    Subtable(ByteBuffer bytes, int at) {
      covered = coverage(bytes, at + u16(bytes, at + 2));
      int format1 = u16(bytes, at + 4);
      int size = 2 * (Integer.bitCount(format1) + Integer.bitCount(u16(bytes, at + 6)));
      int advance = (format1 & 4) == 0 ? -1 : 2 * Integer.bitCount(format1 & 3);
      if (u16(bytes, at) == 1) {
        for (Map.Entry<Integer, Integer> first : covered.entrySet()) {
          int set = at + u16(bytes, at + 10 + 2 * first.getValue());
          for (int i = 0; i < u16(bytes, set); i++) {
            int record = set + 2 + i * (2 + size);
            int value = advance < 0 ? 0 : bytes.getShort(record + 2 + advance);
            pairs.put(key(first.getKey(), u16(bytes, record)), value);
          }
        }
      } else {
        firstClasses = classes(bytes, at + u16(bytes, at + 8));
        secondClasses = classes(bytes, at + u16(bytes, at + 10));
        byClass = new int[u16(bytes, at + 12)][u16(bytes, at + 14)];
        for (int i = 0; i < byClass.length; i++) {
          for (int k = 0; k < byClass[i].length; k++) {
            int record = at + 16 + (i * byClass[i].length + k) * size;
            byClass[i][k] = advance < 0 ? 0 : bytes.getShort(record + advance);
          }
        }
      }
    }

    @Nullable Integer value(int first, int second) {
      if (byClass.length == 0) {
        return pairs.get(key(first, second));
      }
      if (!covered.containsKey(first)) {
        return null;
      }
      return byClass[firstClasses.getOrDefault(first, 0)][secondClasses.getOrDefault(second, 0)];
    }

    private static long key(int first, int second) {
      return ((long) first << 16) | second;
    }
  }
}
