// Draft: the ledger of whatever is selected.
import { showLedger } from '../ledger/ledger.js';

export function show({ page }) {
  return showLedger(page);
}
