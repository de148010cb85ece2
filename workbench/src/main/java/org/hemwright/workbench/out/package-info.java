/**
 * The {@code out} folder: all that is made from a pattern, written so that a reader never sees half
 * of it.
 *
 * <p>Files are written aside, each forced to the disk, then their folder takes its final name, then
 * one small pointer file is moved into place. A crash at any moment leaves the last whole
 * publication as it was. The folder's name is the version and a hash of its manifest, and the
 * manifest lists every file with its SHA-256; so the same pattern always lands in the same folder.
 *
 * <p>Open {@link org.hemwright.workbench.out.OutFolder} first.
 */
@NullMarked
package org.hemwright.workbench.out;

import org.jspecify.annotations.NullMarked;
