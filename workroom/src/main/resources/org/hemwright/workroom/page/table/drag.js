// Dragging what is selected: the server says which of her numbers change, and shows what comes of it.

/** Begins, moves and ends a drag; each says whether it took the pointer. */
export function startDragging() {
  return {
    begin() {},
    move() { return false; },
    end() { return false; },
    cancel() {},
  };
}
