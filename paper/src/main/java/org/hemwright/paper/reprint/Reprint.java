package org.hemwright.paper.reprint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.Printing;
import org.hemwright.paper.reprint.PageInk.Difference;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PageName;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;

/**
 * The pages to print again, in one print file.
 *
 * @param file the new file's name
 * @param paper what it is printed on
 * @param of how many pages it has
 * @param pages that a maker of the old version must print again, in their order
 * @param wordsOnly those on which only words stand elsewhere: she may keep the old ones
 * @param gone names of pages with pieces that the new file has no more
 */
public record Reprint(
    String file, String paper, int of, List<Page> pages, List<Page> wordsOnly, List<Gone> gone) {
  public Reprint {
    pages = List.copyOf(pages);
    wordsOnly = List.copyOf(wordsOnly);
    gone = List.copyOf(gone);
  }

  /**
   * A page of the new file.
   *
   * @param name as it is printed
   * @param number in the file, from 1
   * @param sizes for which it is to be printed again, in the chart's order
   */
  public record Page(PageName name, int number, List<String> sizes) {
    public Page {
      sizes = List.copyOf(sizes);
    }
  }

  /**
   * A page of the old file that has no successor.
   *
   * @param name as it was printed
   * @param number in the old file, from 1
   */
  public record Gone(PageName name, int number) {}

  /** The pages to print again by the sizes that stand on them, each group in order. */
  public Map<List<String>, List<Page>> bySizes() {
    Map<List<String>, List<Page>> groups = new LinkedHashMap<>();
    pages.forEach(
        page -> groups.computeIfAbsent(page.name().sizes(), key -> new ArrayList<>()).add(page));
    return groups;
  }

  /** The pages to print again in each file that both options and papers ask for. */
  public static List<Reprint> of(SizeRun old, SizeRun now, PaperOptions options) {
    Printing was = Printing.of(old, options);
    Printing is = Printing.of(sameVersion(old, now), options);
    List<PageFormat> papersBefore = was.formats();
    List<Reprint> files = new ArrayList<>();
    for (PageFormat format : is.formats()) {
      PatternPages before =
          papersBefore.contains(format)
              ? was.pages(format)
              : new PatternPages(List.of(), List.of(), List.of());
      String file = Printing.fileName(now, options, format);
      files.add(compared(file, format, before, is.pages(format)));
    }
    return files;
  }

  /** The new version under the old one's version and day, which alone makes no page another. */
  private static SizeRun sameVersion(SizeRun old, SizeRun now) {
    Details was = old.pattern().details();
    Details kept = now.pattern().details().versioned(was.version(), was.dated());
    return new SizeRun(now.pattern().with(kept), now.sizes());
  }

  private static Reprint compared(
      String file, PageFormat format, PatternPages was, PatternPages is) {
    Map<PageName, Integer> before = new LinkedHashMap<>();
    for (int i = 0; i < was.names().size(); i++) {
      before.putIfAbsent(was.names().get(i), i);
    }
    Set<String> texts = texts(was);
    texts.retainAll(texts(is));
    List<Page> pages = new ArrayList<>();
    List<Page> wordsOnly = new ArrayList<>();
    for (int i = 0; i < is.names().size(); i++) {
      PageName name = is.names().get(i);
      Integer there = before.remove(name);
      if (there == null) {
        pages.add(new Page(name, i + 1, name.sizes()));
        continue;
      }
      PageInk.Answer answer =
          PageInk.of(is.sheets().get(i), name.kind())
              .against(PageInk.of(was.sheets().get(there), name.kind()), texts);
      List<String> sizes =
          answer.shared()
              ? name.sizes()
              : name.sizes().stream().filter(answer.sizes()::contains).toList();
      if (answer.difference() == Difference.SUBSTANCE) {
        pages.add(new Page(name, i + 1, sizes));
      } else if (answer.difference() == Difference.PLACES) {
        wordsOnly.add(new Page(name, i + 1, sizes));
      }
    }
    List<Gone> gone = new ArrayList<>();
    before.forEach((name, index) -> gone.add(new Gone(name, index + 1)));
    return new Reprint(file, format.title(), is.sheets().size(), pages, wordsOnly, gone);
  }

  private static Set<String> texts(PatternPages pages) {
    Set<String> texts = new HashSet<>();
    pages.sheets().stream()
        .flatMap(sheet -> sheet.inked().stream())
        .forEach(
            (Inked item) -> {
              if (item instanceof Words words) {
                texts.add(words.line().text());
              }
            });
    return texts;
  }
}
