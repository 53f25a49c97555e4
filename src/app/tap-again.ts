/**
 * Does what was tapped of the picture, now that the app stands in its place: where it says word for word what the
 * picture said. Else nothing is done, and a line says so.
 *
 * @param tap acts on a control as a finger does
 */
export function tapAgain(at: HTMLElement, taps: readonly Element[], tap: (on: HTMLElement) => void): void {
  const page = taps[0]?.closest('#app');
  if (!page) return;
  const then = [...page.querySelectorAll('*')];
  const now = [...at.querySelectorAll<HTMLElement>('*')];
  const same = then.length === now.length && page.textContent === at.textContent;
  const on = taps.flatMap((tapped) => (same && now[then.indexOf(tapped)]) || []);
  for (const one of on) tap(one);
  if (!same) sayNotTaken();
}

/** Long enough to be read. Milliseconds. */
const stands = 5000;

function sayNotTaken(): void {
  const line = document.createElement('p');
  line.className = 'over-page';
  line.setAttribute('role', 'alert');
  line.textContent = 'That tap was not taken: tap again';
  document.body.append(line);
  setTimeout(() => line.remove(), stands);
}
