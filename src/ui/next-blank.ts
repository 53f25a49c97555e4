/** Opens the blank of that name. */
export const openBlank = (name: string): void =>
  [...document.querySelectorAll<HTMLElement>('.blank')]
    .find((blank) => (blank.getAttribute('aria-label') ?? blank.textContent ?? '').startsWith(`${name}:`))
    ?.click();

/**
 * Opens the next empty blank after the one in hand, the first of the page after the last; none where no other is empty.
 * The one in hand is looked for as the panel comes to stand.
 */
export function nextBlank(): (() => void) | undefined {
  const open = document.querySelector('.blank[aria-expanded="true"]');
  const label = (blank: Element) => blank.getAttribute('aria-label');
  const empty = () => [...document.querySelectorAll<HTMLElement>('.blank.empty:not(.choice)')];
  const others = empty().filter((blank) => blank !== open);
  if (!open || others.length === 0) return undefined;
  const after = (blank: Element) => open.compareDocumentPosition(blank) & Node.DOCUMENT_POSITION_FOLLOWING;
  const found = others.find(after) ?? others[0];
  const name = found && label(found);
  // what was filled may have changed the page: the blank is looked for again by its name, once that is painted
  return () =>
    void setTimeout(() =>
      empty()
        .find((blank) => label(blank) === name)
        ?.click(),
    );
}
