/**
 * The booklet's fixed wording, by language, and how values are worded in it.
 *
 * <p>A language is one message file; British English says only what it says otherwise than
 * American. Templates hold no digits: every number comes through a slot, with its provenance. Open
 * {@link org.hemwright.booklet.words.Wordbook} first, then {@link
 * org.hemwright.booklet.words.Telling}.
 */
@NullMarked
package org.hemwright.booklet.words;

import org.jspecify.annotations.NullMarked;
