/**
 * HTTP on the loopback address: the page's own files, the editor's libraries and one WebSocket.
 *
 * <p>Every address starts with a random token; Host and Origin are checked before anything else;
 * the page may load nothing from elsewhere. No path leads to a file of the disk: pages come from
 * the program's own resources by a list of names. Open {@link
 * org.hemwright.workroom.serve.LocalServer} first, then {@code Gate}.
 */
@NullMarked
package org.hemwright.workroom.serve;

import org.jspecify.annotations.NullMarked;
