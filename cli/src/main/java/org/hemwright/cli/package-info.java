/**
 * The command line: arguments in, answers and exit codes out, nothing else.
 *
 * <p>Answers go to standard output, in sentences or, with {@code --json}, as JSON alone; messages
 * and progress go to standard error. Exit code 0: all is well; 1: a check fails; 2: the input is
 * wrong, each problem told as {@code file:line:column: what is wrong; what would mend it}; 3: the
 * program is at fault. No stack trace is ever shown.
 *
 * <p>Open {@link org.hemwright.cli.Main} first, then {@link org.hemwright.cli.FolderCommand}.
 */
@NullMarked
package org.hemwright.cli;

import org.jspecify.annotations.NullMarked;
