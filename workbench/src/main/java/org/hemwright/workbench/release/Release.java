package org.hemwright.workbench.release;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.pattern.SizeRun;

/**
 * A version as it was given out.
 *
 * @param run every piece in every size, as it was evaluated then
 * @param publication the name of the folder in {@code out} that it was published in
 * @param sources the files it was made from, by name
 */
public record Release(SizeRun run, String publication, SortedMap<String, byte[]> sources) {
  /** The file that makes a folder a release: it lists the others with their hashes. */
  public static final String FILE = "release.json";

  /** The frozen run. */
  public static final String RUN = "run.json";

  public Release {
    sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
  }

  /** The version, as the designer writes it. */
  public String version() {
    return run.pattern().details().version();
  }
}
