import type * as Picture from './picture';

type Place = Pick<typeof Picture, 'savePicture' | 'forgetPicture'>;

/** Screens where a figure is carried from, and the one a job begins with. */
const pictured = /^#\/(?:$|saw\/|setup\/|marks\/|stops\/)/;
/** More than any of those screens comes to, but for very long lists: these are not worth the wait. Characters. */
const mostHtml = 200_000;
/** A hand in the middle of something, or what is not kept yet: no state to come back to. */
const underWay = '[role="dialog"], .saving-line, .halfdone';

/** Keeps a picture of what the app shows, taken anew when nothing has changed for a moment. */
export function keepPicture(app: HTMLElement, place: Place): void {
  let wait: ReturnType<typeof setTimeout> | undefined;
  let stands = true;
  const takeSoon = () => {
    clearTimeout(wait);
    wait = setTimeout(() => {
      stands = take(app, place);
    }, 250);
  };
  const changed = () => {
    if (stands) place.forgetPicture();
    stands = false;
    takeSoon();
  };
  new MutationObserver(changed).observe(app, {
    subtree: true,
    childList: true,
    characterData: true,
    attributes: true,
  });
  takeSoon();
}

/** Whether one was kept. */
function take(app: HTMLElement, { savePicture }: Place): boolean {
  if (!pictured.test(location.hash || '#/') || app.querySelector(underWay)) return false;
  const { dataset, className } = document.documentElement;
  const html = markupOf(app);
  if (html.length > mostHtml) return false;
  const sheets = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].map((l) => l.href);
  try {
    savePicture({ theme: dataset.theme ?? '', look: className, sheets, html });
    return true;
  } catch {
    return false; // full or not allowed: the next start goes without
  }
}

function markupOf(app: HTMLElement): string {
  const copy = app.cloneNode(true) as HTMLElement;
  for (const drawn of copy.querySelectorAll('[style]')) {
    drawn.setAttribute('data-css', drawn.getAttribute('style') ?? '');
    drawn.removeAttribute('style');
  }
  return copy.innerHTML;
}
