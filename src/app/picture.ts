import type { JournalTold, MarkAsked } from '../store/journal/journal';
import type { JournalWorker } from './journal-worker';

/**
 * A screen as it stood last, kept to be shown at the next start until the app itself stands: greyed, deaf, and in a
 * shadow of its own, so that nothing is ever read of it. Each is of one build and one address; it is dropped with the
 * first change of what it shows, before that change is anywhere, so a start killed in between shows none.
 *
 * Where the database holds what it held when the picture was taken, the picture stands clear, and takes a tap: the app
 * does it as it takes over.
 */
type Picture = Taken & {
  readonly build: string;
  readonly at: string;
};

/** What is taken of a screen. */
export type Taken = {
  readonly theme: string;
  readonly look: string;
  readonly sheets: readonly string[];
  readonly html: string;
  /** The job it shows, and `markOf` it; a picture without is never clear. */
  readonly of?: readonly [job: string, mark: string] | undefined;
};

const key = 'knifeline.picture';
const hostId = 'picture';

/** The script of the page has another name in every build. */
const build = (): string => document.querySelector<HTMLScriptElement>('script[src]')?.src ?? '';

/** Where the page stands; the bare address opens the screen that was left. */
const here = (): string => location.hash || '#/';

function kept(): Picture | undefined {
  try {
    const picture: Picture | undefined = JSON.parse(localStorage.getItem(key) ?? 'null') ?? undefined;
    const fits = picture?.build === build() && (location.hash === '' || picture.at === here());
    return fits ? picture : undefined;
  } catch {
    return undefined; // no storage, or none of ours: the app comes a moment later
  }
}

/** Shows the screen as it stood last, where one is kept for this address; ends once it is painted. */
export async function showPicture(by: JournalWorker | undefined): Promise<void> {
  const picture = kept();
  if (!picture) return;
  const isSo = stillSo(picture, by);
  const frame = document.createElement('div');
  frame.id = hostId;
  frame.inert = true;
  frame.ariaHidden = 'true';
  const sheets = picture.sheets.map(sheetOf);
  const page = pageOf(picture);
  const line = opening();
  frame.attachShadow({ mode: 'closed' }).append(...sheets, page, line);
  document.documentElement.dataset.theme = picture.theme;
  document.documentElement.className = picture.look;
  document.body.append(frame);
  await Promise.race([Promise.all(sheets.map(loaded)), dropped]);
  const parts = { frame, page, line };
  void isSo.then((so) => so && stand(parts));
  await painted();
}

/** Whether the database holds what it held then. */
async function stillSo({ of }: Picture, by: JournalWorker | undefined): Promise<boolean> {
  if (!of || !by) return false;
  const [job, mark] = of;
  by.worker.postMessage({ no: 0, what: 'mark', job } satisfies MarkAsked);
  return new Promise((done) => {
    by.worker.addEventListener('message', ({ data }: MessageEvent<JournalTold>) => {
      if (data.no === 0) done(data.mark === mark);
    });
  });
}

type Parts = { readonly frame: HTMLElement; readonly page: HTMLElement; readonly line: HTMLElement };

/** It stands clear, and what is tapped of it waits for the app. */
function stand({ frame, page, line }: Parts): void {
  const clear = (is: boolean) => {
    frame.inert = !is;
    frame.toggleAttribute('data-clear', is);
  };
  clear(true);
  line.hidden = true;
  page.addEventListener('pointerdown', () => {
    lifted = new Promise((done) => {
      for (const end of ['click', 'pointercancel']) addEventListener(end, done);
      setTimeout(done, longestTap);
    });
  });
  page.addEventListener('click', (event) => {
    event.preventDefault();
    const on = (event.target as Element).closest('button, a');
    if (!on || taps.includes(on)) return;
    taps.push(on);
    on.classList.add('saving');
    line.hidden = false;
    clear(on.matches('[aria-checked]')); // anything else leads away from what it shows
  });
}

/** A finger is not waited for longer. Milliseconds. */
const longestTap = 1000;

const taps: Element[] = [];
let lifted: Promise<unknown> | undefined;

/** What was tapped, once no finger is on it. */
export async function tapped(): Promise<readonly Element[]> {
  await lifted;
  return taps;
}

function sheetOf(href: string): HTMLLinkElement {
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = href;
  return link;
}

const loaded = (link: HTMLLinkElement): Promise<unknown> =>
  new Promise((done) => {
    link.onload = done;
    link.onerror = done;
  });

/** A page in the background paints nothing: there the app does not wait for it. */
export const painted = (): Promise<void> =>
  document.hidden ? Promise.resolve() : new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

function pageOf({ html, look, theme }: Picture): HTMLElement {
  const page = document.createElement('div');
  page.id = 'app';
  page.className = look;
  page.dataset.theme = theme;
  page.append(...new DOMParser().parseFromString(html, 'text/html').body.childNodes);
  // the page's policy takes no style written in markup
  for (const drawn of page.querySelectorAll<HTMLElement>('[data-css]'))
    drawn.style.cssText = drawn.dataset.css ?? '';
  return page;
}

/** Said over it, so that nobody takes it for what stands. */
function opening(): HTMLElement {
  const line = document.createElement('p');
  line.id = 'opening';
  line.className = 'over-page';
  line.textContent = 'Opening';
  return line;
}

const host = (): HTMLElement | null => document.getElementById(hostId);

/** One stands, and the app behind it does not yet. */
export const isPicture = (): boolean => host() !== null;

let drop: (ended?: unknown) => void;
/** Ends when it is dropped: a sheet that is taken away before it came says nothing more. */
const dropped = new Promise<unknown>((done) => {
  drop = done;
});

/** The app stands in its place. */
export function dropPicture(): void {
  host()?.remove();
  drop();
}

/** Keeps a picture for the next start; throws where the phone is full or does not let it. */
export function savePicture(taken: Taken): void {
  localStorage.setItem(key, JSON.stringify({ build: build(), at: here(), ...taken } satisfies Picture));
}

/** What it shows changes. */
export function forgetPicture(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // no storage: there is no picture to forget
  }
}
