/**
 * Answers, for other programs as JSON, for people as text and for spreadsheets as tables, all from
 * the same values.
 *
 * <p>Scripts rely on the shapes of the JSON: fields may be added, never changed. Its lengths are
 * millimetres, rounded to a millionth, its areas square millimetres; texts and tables have the
 * document's own units. Nothing is worked out or judged here.
 *
 * <p>Open {@link org.hemwright.workbench.report.CheckReport} first.
 */
@NullMarked
package org.hemwright.workbench.report;

import org.jspecify.annotations.NullMarked;
