/**
 * Text to a sealed tree of statements and back.
 *
 * <p>One table of statement forms decides what a line may say; the parser, the formatter,
 * completion, the language reference and did-you-mean all read that table. Every node keeps the
 * span of text it came from; numbers keep their unit and spelling. Parsing never throws: what could
 * not be read is a finding, and the lines around it are read all the same.
 *
 * <p>Open {@link org.hemwright.draft.syntax.Statement} first.
 */
@NullMarked
package org.hemwright.draft.syntax;

import org.jspecify.annotations.NullMarked;
