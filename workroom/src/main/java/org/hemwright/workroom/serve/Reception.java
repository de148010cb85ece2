package org.hemwright.workroom.serve;

import org.hemwright.workroom.talk.Host;

/** Knows which page is served now, and who receives it. */
public interface Reception {
  /** Who receives a page that opens now. */
  Host host();

  /** The file of the page among the page's files: {@code index.html}. */
  String page();
}
