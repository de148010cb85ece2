/** Arguments, progress, exit codes. */
@NullMarked
package org.hemwright.cli;

import org.jspecify.annotations.NullMarked;
