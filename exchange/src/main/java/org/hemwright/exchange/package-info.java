/**
 * The door for files that are not the pattern document: it reads a designer's charts, drawings and
 * photographs into values of the domain, and writes the files that other tools read.
 *
 * <p>Every reader takes bytes and a name and gives values and findings; it opens no file, follows
 * no link inside one, and throws nothing for what a file may hold.
 *
 * <p>Open {@link org.hemwright.exchange.chart.ChartReader} first.
 */
@NullMarked
package org.hemwright.exchange;

import org.jspecify.annotations.NullMarked;
