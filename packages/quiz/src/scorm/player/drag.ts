/** Drags an element with mouse, pen or finger, and says what it was let go over. */

/** @returns what ends it */
export function draggable(element: HTMLElement, dropped: (under: Element | null) => void): () => void {
  let from: { x: number; y: number; pointer: number } | undefined;
  const rest = (): void => {
    from = undefined;
    element.classList.remove("dragged");
    element.style.transform = "";
  };
  const down = (event: PointerEvent): void => {
    if (!event.isPrimary || event.button !== 0) return;
    from = { x: event.clientX, y: event.clientY, pointer: event.pointerId };
    element.setPointerCapture(event.pointerId);
    element.classList.add("dragged");
    event.preventDefault();
  };
  const move = (event: PointerEvent): void => {
    if (event.pointerId !== from?.pointer) return;
    element.style.transform = `translate(${event.clientX - from.x}px, ${event.clientY - from.y}px)`;
  };
  const up = (event: PointerEvent): void => {
    if (event.pointerId !== from?.pointer) return;
    // What is dragged takes no pointer itself, by its style: the rest of the page lies under it.
    const under = document.elementFromPoint(event.clientX, event.clientY);
    rest();
    dropped(under);
  };
  element.addEventListener("pointerdown", down);
  element.addEventListener("pointermove", move);
  element.addEventListener("pointerup", up);
  element.addEventListener("pointercancel", rest);
  return () => {
    element.removeEventListener("pointerdown", down);
    rest();
  };
}
