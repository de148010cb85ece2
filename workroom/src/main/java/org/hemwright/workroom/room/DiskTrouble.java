package org.hemwright.workroom.room;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.workroom.keep.Keeper;
import org.jspecify.annotations.Nullable;

/** What keeps changes from the disk, and what is not there any more, as windows are told it. */
final class DiskTrouble {
  private final Keeper keeper;
  private final String folder;
  private @Nullable Exception fault;
  private SortedMap<String, Keeper.Withheld> withheld = new TreeMap<>();
  private List<String> missing = List.of();

  /** None yet, with who keeps the texts of a folder. */
  DiskTrouble(Keeper keeper, String folder) {
    this.keeper = keeper;
    this.folder = folder;
  }

  /** Notes that the last attempt failed. */
  void met(Exception failure) {
    fault = failure;
  }

  /** Notes that it went well, but for some files. */
  void kept(SortedMap<String, Keeper.Withheld> but) {
    fault = null;
    withheld = but;
  }

  /** Looks for files that are gone; whether others are than before. */
  boolean look() {
    List<String> gone = keeper.missing();
    boolean others = !gone.equals(missing);
    missing = gone;
    return others;
  }

  /** Whether the last attempt failed. */
  boolean isFault() {
    return fault != null;
  }

  /** Whether something is not on the disk as it should be. */
  boolean isAny() {
    return fault != null || !withheld.isEmpty();
  }

  /** Puts into a head the trouble, by its key in the page's words, and what it is about. */
  void tell(ObjectNode head) {
    ObjectNode told = head.putObject("trouble");
    Exception met = fault;
    if (met == null && !withheld.isEmpty()) {
      withheld.entrySet().stream()
          .findFirst()
          .ifPresent(
              each ->
                  told.put("key", each.getValue().name().toLowerCase(Locale.ROOT))
                      .put("of", each.getKey()));
    } else if (met instanceof IOException && keeper.isFull()) {
      told.put("key", "full").put("of", folder);
    } else if (met instanceof NoSuchFileException gone) {
      told.put("key", "gone").put("of", gone.getFile());
    } else if (met instanceof IOException) {
      told.put("key", "unwritten").put("of", String.valueOf(met.getMessage()));
    } else if (met != null) {
      told.put("key", "fault").put("of", met.toString());
    }
    ArrayNode gone = head.putArray("missing");
    missing.forEach(gone::add);
  }
}
