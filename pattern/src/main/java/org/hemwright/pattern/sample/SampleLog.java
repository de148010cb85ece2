package org.hemwright.pattern.sample;

import java.util.List;

/**
 * A designer's notes of the samples that were sewn.
 *
 * @param entries in the order of the file
 */
public record SampleLog(List<SampleEntry> entries) {
  /** The file's name in every folder. */
  public static final String FILE = "samples.csv";

  public SampleLog {
    entries = List.copyOf(entries);
  }
}
