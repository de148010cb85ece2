/**
 * The flow from a pattern folder to everything that is made from it, in one readable class, and the
 * two doors' common ground: the command line and the workroom call this and nothing below it.
 *
 * <p>Here stand the explicit lists of checks, of message files and of files that are written. Every
 * stage that it calls is a pure function; only {@code folder} reads the disk and only {@code out}
 * writes it.
 *
 * <p>Open {@link org.hemwright.workbench.Workbench} first.
 */
@NullMarked
package org.hemwright.workbench;

import org.jspecify.annotations.NullMarked;
