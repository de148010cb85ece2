package org.hemwright.paper;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One file for the maker.
 *
 * @param name relative, with forward slashes: {@code sandling-skirt-1.0-pages.pdf}
 * @param paper "A4 or Letter", "A0"; blank for a drawing that is not printed on pages
 * @param bytes what it holds; not to be written to
 * @param pages how many pages it has, all told; 1 for a drawing
 * @param groups for each group in it, the pages it takes and those that each size needs
 */
@SuppressWarnings("ArrayRecordComponent")
public record PrintedFile(
    String name, String paper, byte[] bytes, int pages, List<GroupPages> groups) {
  public PrintedFile {
    groups = List.copyOf(groups);
  }

  /**
   * The pages of a group, not counting the key, the map and the cutting table.
   *
   * @param sizes the names of its sizes, in the chart's order
   * @param pages how many pages hold its pieces
   * @param pagesOfSize how many of them each size needs, by the size's name
   * @param pagesOfView the same for each of several views, by the view's name
   */
  public record GroupPages(
      List<String> sizes,
      int pages,
      Map<String, Integer> pagesOfSize,
      Map<String, Map<String, Integer>> pagesOfView) {
    public GroupPages {
      sizes = List.copyOf(sizes);
      pagesOfSize = Collections.unmodifiableMap(new LinkedHashMap<>(pagesOfSize));
      Map<String, Map<String, Integer>> views = new LinkedHashMap<>();
      pagesOfView.forEach(
          (view, pagesOf) ->
              views.put(view, Collections.unmodifiableMap(new LinkedHashMap<>(pagesOf))));
      pagesOfView = Collections.unmodifiableMap(views);
    }
  }

  /** The same file in a folder. */
  PrintedFile within(String folder) {
    return new PrintedFile(folder + name, paper, bytes, pages, groups);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PrintedFile file
        && name.equals(file.name)
        && paper.equals(file.paper)
        && Arrays.equals(bytes, file.bytes)
        && pages == file.pages
        && groups.equals(file.groups);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, paper, Arrays.hashCode(bytes), pages, groups);
  }

  @Override
  public String toString() {
    return "PrintedFile[" + name + ", " + bytes.length + " bytes, " + pages + " pages]";
  }
}
