/**
 * The workroom: a page in the browser of this machine, on which a pattern folder is drawn, changed
 * and made. It is a door: it drafts nothing and draws nothing itself but sends what the workbench
 * came to.
 *
 * <p>One {@link org.hemwright.workroom.room.Room} for a folder holds its texts as a row of numbered
 * revisions; {@code history} says what a revision is, {@code keep} writes each to the disk, {@code
 * serve} speaks HTTP and a WebSocket on the loopback address only, {@code talk} is what is said
 * over it. Everything a window shows is a {@link org.hemwright.workroom.room.View}: one package
 * each, with a module of the same name among the page's files. The list of views is in {@link
 * org.hemwright.workroom.Workroom}, which is the class to open first; docs/workroom.md tells the
 * protocol.
 */
@NullMarked
package org.hemwright.workroom;

import org.jspecify.annotations.NullMarked;
