/**
 * The report of the checks as one page for the designer: what was found and what would mend it, the
 * pieces with each finding pinned to its place, every seam over the sizes, whom the size chart
 * serves, and what she accepted and why. Beside it the page of cloth to buy.
 *
 * <p>Each is one HTML file that needs nothing else: no script, no network, no font file, pictures
 * drawn in it. It may be read in light and dark, on a narrow and a wide screen, aloud, and on
 * paper. Everything that comes from a document is written through {@link
 * org.hemwright.paper.markup.Markup}, which escapes it. Values in, text out; the same text for the
 * same run.
 *
 * <p>Open {@link org.hemwright.workbench.page.ReportPage} first, or {@link
 * org.hemwright.workbench.page.YardagePage}.
 */
@NullMarked
package org.hemwright.workbench.page;

import org.jspecify.annotations.NullMarked;
