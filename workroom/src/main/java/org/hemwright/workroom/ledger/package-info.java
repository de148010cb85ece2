/**
 * Whatever is selected, in numbers and words, in every size: lengths, places, what it is sewn to.
 *
 * <p>Lengths are millimetres inside and said in the edition that the document asks for. Open {@link
 * org.hemwright.workroom.ledger.LedgerView} first.
 */
@NullMarked
package org.hemwright.workroom.ledger;

import org.jspecify.annotations.NullMarked;
