/**
 * The pattern language: a readable document and a size chart become a {@link
 * org.hemwright.pattern.SizeRun}, or findings that say where and what would mend it.
 *
 * <p>{@code syntax} turns text into a sealed tree of statements with spans; {@code plan} resolves
 * names, quantities and order over the whole document once, before any size, and evaluates the plan
 * for a body. Nothing here reads a file: a document is text and its chart is a value.
 */
@NullMarked
package org.hemwright.draft;

import org.jspecify.annotations.NullMarked;
