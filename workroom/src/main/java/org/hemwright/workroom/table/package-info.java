/**
 * What lies on the table: pieces as lines for the page to draw, in every size, and only those that
 * changed since the window last heard. Millimetres, x right and y up. Open {@link
 * org.hemwright.workroom.table.TableView} first.
 */
@NullMarked
package org.hemwright.workroom.table;

import org.jspecify.annotations.NullMarked;
