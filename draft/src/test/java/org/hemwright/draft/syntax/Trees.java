package org.hemwright.draft.syntax;

import java.util.List;
import java.util.regex.Pattern;

/** Trees as text, without the places they were read from. */
final class Trees {
  private static final Pattern SPAN = Pattern.compile(",? ?span=Span\\[start=\\d+, end=\\d+\\]");

  private Trees() {}

  /** What a document says, whatever its blanks. */
  static String of(Document document) {
    return of(document.statements());
  }

  static String of(List<? extends Object> nodes) {
    return SPAN.matcher(nodes.toString()).replaceAll("");
  }
}
