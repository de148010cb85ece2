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

  /** The same, with names and numbers as short as they can be read. */
  static String readable(Object node) {
    String text = of(List.of(node));
    for (String[] rule :
        new String[][] {
          {"Name\\[text=(\\w+)\\]", "$1"},
          {"Reference\\[piece=Optional.empty, name=(\\w+)\\]", "$1"},
          {"Reference\\[piece=Optional\\[(\\w+)\\], name=(\\w+)\\]", "$1.$2"},
          {"Named\\[reference=([\\w.]+)\\]", "$1"},
          {"SizeWord\\[name=(\\w+)\\]", "$1"},
          {"Literal\\[value=([\\d.]+), unit=(\\w+)\\]", "$1 $2"},
          {"Optional.empty", "none"},
          {"Optional\\[([^\\[\\]]*)\\]", "$1"},
        }) {
      text = text.replaceAll(rule[0], rule[1]);
    }
    return text.substring(1, text.length() - 1);
  }
}
