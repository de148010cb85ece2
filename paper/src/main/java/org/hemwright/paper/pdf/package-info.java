/**
 * Writes sheets as a PDF file (ISO 32000), one page for each sheet at its true size.
 *
 * <p>Promises: a layer for each size and one for what is common; fonts embedded as subsets; no
 * scaling asked of the printer; title, author, language; the same bytes for the same sheets. It
 * refuses pages over 14 400 units (5080 mm) on a side, which readers do not honour. Open {@link
 * org.hemwright.paper.pdf.PdfWriter}.
 */
@NullMarked
package org.hemwright.paper.pdf;

import org.jspecify.annotations.NullMarked;
