/**
 * A screen as it stood last, kept to be shown at the next start until the app itself stands: greyed, deaf, and in a
 * shadow of its own, so that nothing is ever read of it. Each is of one build and one address; it is dropped with the
 * first change of what it shows, before that change is anywhere, so a start killed in between shows none.
 */
type Picture = {
  readonly build: string;
  readonly at: string;
  readonly theme: string;
  readonly look: string;
  readonly sheets: readonly string[];
  readonly html: string;
};

const key = 'knifeline.picture';
const hostId = 'picture';
/** Screens where a figure is carried from, and the one a job begins with. */
const pictured = /^#\/(?:$|saw\/|setup\/|marks\/|stops\/)/;
/** More than any of those screens comes to, but for very long lists: these are not worth the wait. Characters. */
const mostHtml = 200_000;
/** A hand in the middle of something, or what is not kept yet: no state to come back to. */
const underWay = '[role="dialog"], .saving-line, .halfdone';

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
export async function showPicture(): Promise<void> {
  const picture = kept();
  if (!picture) return;
  const frame = document.createElement('div');
  frame.id = hostId;
  frame.inert = true;
  frame.ariaHidden = 'true';
  const sheets = picture.sheets.map(sheetOf);
  frame.attachShadow({ mode: 'closed' }).append(...sheets, pageOf(picture), opening());
  document.documentElement.dataset.theme = picture.theme;
  document.documentElement.className = picture.look;
  document.body.append(frame);
  await Promise.all(sheets.map(loaded));
  await painted();
}

function sheetOf(href: string): HTMLLinkElement {
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = href;
  return link;
}

const loaded = (link: HTMLLinkElement): Promise<void> =>
  new Promise((done) => {
    link.onload = () => done();
    link.onerror = () => done();
  });

/** A page in the background paints nothing: there the app does not wait for it. */
export const painted = (): Promise<void> =>
  document.hidden ? Promise.resolve() : new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

function pageOf({ html, look, theme }: Picture): HTMLElement {
  const page = document.createElement('div');
  page.id = 'app';
  page.className = look;
  page.dataset.theme = theme;
  page.dataset.picture = '';
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

/** The app stands in its place. */
export function dropPicture(): void {
  host()?.remove();
}

/** Keeps a picture of what the app shows, taken anew when nothing has changed for a moment. */
export function keepPicture(app: HTMLElement): void {
  let wait: ReturnType<typeof setTimeout> | undefined;
  let stands = true;
  const takeSoon = () => {
    clearTimeout(wait);
    wait = setTimeout(() => {
      stands = take(app);
    }, 250);
  };
  const changed = () => {
    if (stands) forget();
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

function forget(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // no storage: there is no picture to forget
  }
}

/** Whether one was kept. */
function take(app: HTMLElement): boolean {
  if (!pictured.test(here()) || app.querySelector(underWay)) return false;
  const { dataset, className } = document.documentElement;
  const html = markupOf(app);
  if (html.length > mostHtml) return false;
  const sheets = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].map((l) => l.href);
  const picture: Picture = {
    build: build(),
    at: here(),
    theme: dataset.theme ?? '',
    look: className,
    sheets,
    html,
  };
  try {
    localStorage.setItem(key, JSON.stringify(picture));
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
