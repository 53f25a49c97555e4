/** A blank to go on to. */
type Next = { readonly name: string; readonly open: () => void };

const nameOf = (blank: HTMLElement): string => blank.dataset.name ?? '';

/** Opens the blank of that name. */
export const openBlank = (name: string): void =>
  [...document.querySelectorAll<HTMLElement>('.blank')].find((blank) => nameOf(blank) === name)?.click();

/**
 * The next empty blank after the one in hand, the first of the page after the last; none where no other is empty. The
 * one in hand is looked for as the panel comes to stand.
 */
export function nextBlank(): Next | undefined {
  const inHand = document.querySelector('.blank[aria-expanded="true"]');
  const empty = () => [...document.querySelectorAll<HTMLElement>('.blank.empty:not(.choice)')];
  const others = empty().filter((blank) => blank !== inHand);
  if (!inHand) return undefined;
  const after = (blank: Element) => inHand.compareDocumentPosition(blank) & Node.DOCUMENT_POSITION_FOLLOWING;
  const found = others.find(after) ?? others[0];
  if (!found) return undefined;
  const name = nameOf(found);
  // what was filled may have changed the page: the blank is looked for again by its name, once that is painted
  const open = () =>
    void setTimeout(() =>
      empty()
        .find((blank) => nameOf(blank) === name)
        ?.click(),
    );
  return { name, open };
}
