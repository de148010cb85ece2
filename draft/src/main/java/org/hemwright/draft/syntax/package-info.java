/**
 * Text to a sealed tree of statements and back.
 *
 * <p>One table of statement forms ({@link org.hemwright.draft.syntax.Forms}) decides what a line
 * may say; the parser, the messages and the language reference read that table, and what an editor
 * needs is in it: fixed words, typed slots, an example and a sentence for each form. Every node
 * keeps the span of text it came from (UTF-16 units); numbers keep their unit and spelling.
 *
 * <p>Reading never throws, whatever the text: what could not be read is a finding, most with the
 * change that would mend it, and the lines around it are read all the same. Depth, length and
 * findings are capped by count. Names, quantities across lines and sizes are not looked at here.
 *
 * <p>Open {@link org.hemwright.draft.syntax.Statement} for the tree, {@link
 * org.hemwright.draft.syntax.DocumentReader} for the way to it.
 */
@NullMarked
package org.hemwright.draft.syntax;

import org.jspecify.annotations.NullMarked;
