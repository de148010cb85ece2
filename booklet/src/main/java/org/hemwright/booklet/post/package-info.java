/**
 * What the designer puts on the web and sends out: a sew-along post for each stage, a shot list for
 * filming, the text of the listing, the tester call and form, and the forms read back.
 *
 * <p>All from the same blocks, ids and numbers as the booklet, so that they cannot drift. Open
 * {@link org.hemwright.booklet.post.Posts} first.
 */
@NullMarked
package org.hemwright.booklet.post;

import org.jspecify.annotations.NullMarked;
