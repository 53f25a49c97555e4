import { effect } from '@preact/signals';
import type { Bench } from '../screens/bench';
import { markOf } from '../store/mark';
import type * as Picture from './picture';

type Place = Pick<typeof Picture, 'savePicture' | 'forgetPicture'>;

/** Screens where a figure is carried from, and the one a job begins with. */
const pictured = /^#\/(?:$|saw\/|setup\/|marks\/|stops\/)/;
/** Where there are boxes to tick. */
const atMachine = /^#\/(?:saw|setup)\//;
/** More than any of those screens comes to, but for very long lists: these are not worth the wait. Characters. */
const mostHtml = 200_000;
/** A hand in the middle of something, or what is not kept yet: no state to come back to. */
const underWay = '[role="dialog"], .saving-line, .halfdone';

/**
 * A screen rests this long before a picture of it is taken, and half of it before its mark is: what another page wrote
 * by then is on the screen when the picture is taken. Milliseconds.
 */
const rest = 250;

/**
 * Keeps a picture of what the app shows, taken anew when nothing has changed for a moment, and when a setting came to
 * be kept later than that: its mark is another one then.
 */
export function keepPicture(
  app: HTMLElement,
  place: Place,
  { job, settings }: Pick<Bench, 'job' | 'settings'>,
): void {
  let wait: ReturnType<typeof setTimeout> | undefined;
  let stands = true;
  const takeSoon = () => {
    clearTimeout(wait);
    wait = setTimeout(() => {
      const marked = markedBy(job.peek()?.id);
      wait = setTimeout(async () => {
        const own = wait;
        const of = await marked;
        if (own === wait) stands = take(app, place, of);
      }, rest / 2);
    }, rest / 2);
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
  effect(() => {
    settings.value;
    takeSoon();
  });
}

/** The job and the mark of a screen that may stand clear: one that says what a job comes to, and nothing else. */
async function markedBy(job: string | undefined): Promise<Picture.Taken['of']> {
  if (job === undefined || !atMachine.test(location.hash)) return undefined;
  const mark = await markOf(job).catch(() => undefined);
  return mark === undefined ? undefined : [job, mark];
}

/** Whether one was kept. */
function take(app: HTMLElement, { savePicture }: Place, of: Picture.Taken['of']): boolean {
  if (!pictured.test(location.hash || '#/') || app.querySelector(underWay)) return false;
  const { dataset, className } = document.documentElement;
  const html = markupOf(app);
  if (html.length > mostHtml) return false;
  const sheets = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].map((l) => l.href);
  try {
    savePicture({ theme: dataset.theme ?? '', look: className, sheets, html, of });
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
