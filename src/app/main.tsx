import { type Signal, signal } from '@preact/signals';
import { render } from 'preact';
import sampleUrl from '../../demo-data/mineral-and-shell-cabinet.json?url';
import type { Bench } from '../screens/bench';
import { openError } from '../store/db';
import type { Journal } from '../store/journal/journal';
import { openStore } from '../store/store';
import { guardTouches } from '../ui/touch';
import { keepLengthsWhole } from '../ui/unbroken';
import { App } from './app';
import { bringInto, homeHere, later, planningHere } from './bring-later';
import { openJournal } from './journal';
import type { JournalWorker } from './journal-worker';
import { besides } from './opening';
import type * as Picture from './picture';
import { randomId } from './random';
import type { RefusalCode } from './refusal';
import { makeBench } from './state';

/** What the page has shown since its first frame: handed on, so that its script exports nothing. */
type Pictured = Pick<
  typeof Picture,
  'dropPicture' | 'isPicture' | 'savePicture' | 'forgetPicture' | 'painted' | 'tapped'
> & {
  /** Ends when the picture, where there is one, is painted. */
  readonly shown: Promise<void>;
  /** What the browser keeps of this address: none on a first visit, which needs no other file for its screen. */
  readonly kept: Promise<readonly unknown[] | undefined>;
  /** What keeps the second copy, on its way already. */
  readonly worker: JournalWorker | undefined;
};

/** What says why nothing opens; the last said stands, and nothing once the app does. */
function refuser(at: HTMLElement, journal: Journal | undefined, { dropPicture }: Pictured) {
  let told = 0;
  const refuse = async (code: RefusalCode) => {
    told += 1;
    const own = told;
    dropPicture();
    (await import('./refusal')).refuse(at, code, { journal, stands: () => own === told });
  };
  const stood = () => {
    told += 1;
  };
  return { refuse, stood };
}

const openWith = (journal: Journal | undefined, gone: Signal<boolean>, onSlow: () => void) =>
  openStore({
    randomId,
    now: () => new Date().toISOString(),
    journal,
    onGone: () => {
      gone.value = true;
    },
    onSlow,
  });

/** Goes where the address says, else where the user left, but past a screen that froze. */
function goThere({ phone: { left }, settings, arrive }: Bench): void {
  const here = left ? besides(left) : location.hash || settings.value.here;
  if (here) history.replaceState(null, '', here);
  arrive();
}

/** What is waited for, and what ends the wait. */
function gate(): readonly [Promise<void>, () => void] {
  let open = () => {};
  const opened = new Promise<void>((done) => {
    open = done;
  });
  return [opened, open];
}

/** Opens what is kept on the phone, then shows the screen the user left. */
async function start(at: HTMLElement, picture: Pictured): Promise<void> {
  keepLengthsWhole();
  const tap = guardTouches(document);
  const [drawn, draw] = gate();
  const [all, stand] = gate();
  // asked for now: a page never depends on a file a newer version cleared away; on a first visit once its screen stands
  const asked = picture.kept.then((kept) => (kept?.length === 0 && !location.hash ? drawn : undefined));
  const reader = asked.then(homeHere);
  const planning = asked.then(planningHere);
  // behind a picture nobody waits for the first screen alone: read in while storage opens
  const painted = picture.isPicture() ? asked.then(() => picture.shown) : drawn;
  const coming = painted.then(() => import('./later'));
  coming.catch(() => undefined); // said where it is waited for
  const gone = signal(false);
  const journal = openJournal(picture.worker);
  const { refuse, stood } = refuser(at, journal, picture);
  const open = () => openWith(journal, gone, () => void refuse('slow'));
  let store = await open();
  while (!store.ok && store.error.code === 'slow') store = await open(); // as the words on the screen say
  if (!store.ok) return refuse(store.error.code);
  const { stands, readOnly } = store.value;
  document.addEventListener('visibilitychange', stands);
  gone.value = readOnly();
  const sample = async () => (await planning).wholeSample(await (await fetch(sampleUrl)).text());
  const around = { sample, planning, reader, wanted: draw, stood: all, gone };
  const bench = await makeBench(store.value, around).catch(openError);
  if ('code' in bench) return refuse(bench.code === 'slow' ? 'no-answer' : bench.code);
  stood();
  goThere(bench);
  const screens = Promise.all([coming, planning]).then(([all]) => all); // the first screen does not wait for them
  const rest = bringInto(later, screens);
  render(<App bench={bench} />, at);
  if (picture.isPicture()) workAhead(bench);
  void picture.painted().then(draw);
  await Promise.all([rest, reader]);
  await takeOver({ at, tap, bench }, picture);
  await picture.painted();
  stand();
  setTimeout(stands); // what came with the rest is on the screen by then
  void bench.phone.evenOut();
  await later.peek()?.allHere(bench);
}

/** What the machine's page stands on is worked out while the file of the page is still read in. */
function workAhead({ route, plan }: Bench): void {
  if (route.value.at !== 'saw' && route.value.at !== 'setup') return;
  try {
    plan.peek();
  } catch {
    // it is asked for once more where it is shown
  }
}

type TakingOver = {
  readonly at: HTMLElement;
  readonly tap: (on: HTMLElement) => void;
  readonly bench: Bench;
};

/** All of the screen is drawn: it takes over from its picture in one frame, and then takes a tap. */
async function takeOver({ at, tap, bench }: TakingOver, picture: Pictured): Promise<void> {
  const tapped = await picture.tapped();
  requestAnimationFrame(() => {
    picture.dropPicture();
    const there = later.peek();
    if (!there) return picture.forgetPicture(); // nothing would drop it with the first change
    there.keepPicture(at, picture, bench);
    there.tapAgain(at, tapped, tap);
  });
  return picture.painted(); // what else a start does comes after it
}

export async function begin(picture: Pictured): Promise<void> {
  const root = document.getElementById('app');
  if (root) await start(root, picture);
}
