/**
 * What was found, where, and what would mend it: a code with typed arguments; the wording lives in
 * message files. Open Finding first.
 */
@NullMarked
package org.hemwright.pattern.finding;

import org.jspecify.annotations.NullMarked;
