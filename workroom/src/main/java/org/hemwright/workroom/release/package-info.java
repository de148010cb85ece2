/**
 * Publishing from the page: checks, then every file, with its progress; refused findings are told
 * as links; a version can be frozen as a release.
 *
 * <p>The work is the workbench's own ({@link org.hemwright.workbench.Publication}), done at length
 * on the texts as they stood when it was asked for. Open {@link
 * org.hemwright.workroom.release.ReleaseView} first.
 */
@NullMarked
package org.hemwright.workroom.release;

import org.jspecify.annotations.NullMarked;
