import type { Doubled } from '../../job/doubled';
import type { Entry } from '../../job/entry';
import type { Job } from '../../job/job';
import { placeOfCode } from '../../job/place-code';
import type { Plan } from '../../plan/plan';
import { whichWords } from '../shared/cut-words';
import { placeWord } from '../shared/noted-words';
import { partWord, workWord } from '../shared/part-words';
import { setupTitle } from '../shared/setup-title';
import { whichAlone } from '../shared/which-words';

export const title = 'Phones disagree';
export const back = 'Job';
export const none = 'The phones agree. Where two of them say different things, it shows here.';
export const tapRight = 'Tap the one that is right. Until then the one in use counts.';
export const pickedAs = ({ thing, what }: About): string => `Picked: ${thing}, ${what}`.slice(0, 200);

/** When a reading was written, and whether it is the one in use. */
export const whenText = (at: string, inUse: boolean): string => `${whenSaid(at)}${inUse ? ', in use' : ''}`;

// What was said, where it is no figure.

export const takenAway = 'taken away';
export const notCut = 'not cut';
export const stays = 'stays';
export const yes = 'yes';
export const no = 'no';
export const nothing = 'nothing';
export const noItems = 'none';

/** What a value is about, as it is called in the shop: the thing, and which figure of it. */
type About = { readonly thing: string; readonly what: string };

/** Figures whose names in the log are no words. */
const figures: Readonly<Record<string, string>> = {
  by: 'which machine of your own cuts its grooves',
  ripBy: 'which machine of your own rips it',
  lengthBy: 'which machine of your own cuts it to length',
  edgeBy: 'on what its edges are cut',
  alongBy: 'which router table its grooves along an edge are cut on',
  shoulderBy: 'on what its notches and laps are cut',
  boreBy: 'on what its holes are bored',
  slotBy: 'with what its slots are cut',
  readings: 'thickness as measured',
  used: 'thickness taken up',
  planned: 'thickness planned',
  usedFront: 'front, taken up',
  usedBack: 'back, taken up',
  usedLeft: 'left, taken up',
  usedRight: 'right, taken up',
  held: 'height kept',
  long: 'length',
  wide: 'width',
  have: 'how many at hand',
  noMore: 'no more can be bought',
  like: 'may come out of',
  bad: 'bad places',
  at: 'where',
  size: 'thickness',
  open: 'no width of its own',
  tape: 'marks to the nearest',
  over: 'over, for final cuts',
  overStick: 'over on a stick',
  carry: 'weight one carries',
  guideOnly: 'cut along the guide only',
  guideSaw: 'which saw of your own cuts the sheets along the guide',
  fenceSaw: 'which saw of your own cuts the sheets at the fence',
  gone: 'taken away, or worked on',
  why: 'let go ahead because',
  asLength: 'length it came to',
  asWidth: 'width it came to',
  mark: 'the mark it keeps',
  markWide: 'the width it keeps',
  alike: 'one mark with its equals, for its length',
  alikeWide: 'one mark with its equals, for its width',
  place: 'where it goes',
  high: 'height',
  heavy: 'how heavy',
  got: 'what the test cut came to',
  drop: 'down to the floor',
  rise: 'up',
  burned: 'tape started at a burned mark',
  burnedAt: 'where the tape was started',
  inside: 'tape body inside',
  body: 'body of the tape',
  apart: 'how far apart the plumb lines hang',
  deep: 'how deep',
  standsUp: 'stood up from its back',
  found: 'where a stud was found',
  footHow: 'what is under the feet',
  into: 'wide after the turn',
  heldBy: 'what holds the shelves',
  sidePast: 'how far the sides run past the top',
  stripThick: 'how thick a strip is',
  stripRoom: 'how much wider its groove is',
  stripSold: 'how long a strip is as sold',
  asideWidth: 'how wide, of the other holder',
  asideDepth: 'how deep, of the other holder',
  asideRoom: 'room at the top, of the other holder',
  spares: 'pins or clips to spare',
  flange: 'room for a pin at each end',
  frontPlay: 'room in front of a shelf',
  backPlay: 'room behind a shelf',
  shelfedgeStock: 'what the shelf edging is of',
};

/** @example figureName('partitionStock') // 'partition stock' */
const figureName = (field: string): string =>
  figures[field] ??
  field.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`).replace(/^has /, 'with ');

const partsOf = (plan: Plan | undefined) =>
  (plan?.parts ?? []).map(({ id, name }) => ({ id, name: partWord(name) }));

type Where = { readonly job: Job; readonly plan: Plan | undefined };
const called = (list: readonly { readonly id: string; readonly name: string }[], id: string | undefined) =>
  list.find((one) => one.id === id)?.name;

/** What a path or an operation is about, in the words of the job. */
export function aboutPlace(place: string, { job, plan }: Where): About {
  const op = plan?.byId.get(place);
  if (op)
    return {
      thing: workWord(op.name),
      what: [setupTitle(op).replace(/ at$/, ''), whichWords(op, job.tape)].filter(Boolean).join(', '),
    };
  const [table = '', id = '', ...rest] = place.split('/');
  if (rest.length === 0 && id === '') return { thing: job.name || 'This job', what: figureName(table) };
  const said = opWords[table];
  if (said !== undefined) return { thing: workedOn(table, id, { job, plan }), what: said };
  if (table === 'notes') return { thing: placeWord(placeOfCode(id), plan), what: figureName('note') };
  if (table === 'room') return ofRoom([id, ...rest]);
  const joint = table === 'banks' && rest[0] === 'corner' ? jointNames[rest[1] ?? ''] : undefined;
  if (joint) return { thing: thingName(table, id, { job, plan }), what: joint };
  const field = figureName(rest[rest.length - 1] ?? '');
  const cut = plan?.byId.get(`cut/${[id, ...rest.slice(0, 2)].join('/')}`);
  if (cut) return { thing: workWord(cut.name), what: `${whichAlone(cut, job.tape) || 'cut'}, ${field}` };
  return {
    thing: thingName(table, id, { job, plan }),
    what: [...within(rest.slice(0, -1)), field].join(', '),
  };
}

/** What is said of the joint of box fronts and sides, by the word it is kept under. */
const jointNames: Readonly<Record<string, string>> = {
  joint: 'how box front and sides are joined',
  rabbet: 'depth of the rabbets in the box front',
  ends: 'where fingers do not fill the height',
  finger: 'width of a finger',
  step: 'step of the sled',
  play: 'how loose a finger goes in',
  front: 'where the box front stands',
  is: 'what the front of a drawer is',
  dowel: 'how thick the dowels are',
  dowellong: 'how long the dowels are',
};

/** The room has no id of its own. */
const ofRoom = (steps: readonly string[]): About => ({
  thing: 'Room',
  what: [...within(steps.slice(0, -1)), figureName(steps[steps.length - 1] ?? '')].join(', '),
});

const opWords: Readonly<Record<string, string>> = {
  cut: 'cut to',
  mark: 'marked at',
  lay: 'cut of the sheet, at',
  buy: 'how many were bought',
};

/** What a tick is about when the plan no longer has its cut. */
function workedOn(table: string, id: string, { job, plan }: Where): string {
  if (table === 'buy') return 'Buying';
  const sheet = table === 'lay' ? job.sheets.find((s) => s.id === id) : undefined;
  if (sheet) return `${called(job.stock, sheet.stock) || 'Sheet'}, no. ${sheet.no}`;
  return called(partsOf(plan), id) || called(job.boards, id) || id.replaceAll('~', ' ');
}

function thingName(table: string, id: string, { job, plan }: Where): string {
  const lists: Readonly<Record<string, Parameters<typeof called>[0]>> = {
    stock: job.stock,
    boards: job.boards,
    cases: job.cases,
    banks: job.banks.map((bank) => ({ id: bank.id, name: bank.name ?? '' })),
    things: job.things,
    work: job.work,
    parts: partsOf(plan),
  };
  return called(lists[table] ?? [], id) || (nouns[table] ?? id.replaceAll('~', ' '));
}

const nouns: Readonly<Record<string, string>> = {
  stock: 'Sheet',
  boards: 'Board',
  cases: 'Case',
  banks: 'Drawers',
  things: 'A thing for a drawer',
  work: 'Work by hand',
  recipes: 'A setup',
  offcuts: 'An offcut',
  let: 'A cut',
  widths: 'A joint',
  kerftest: 'A test of a kerf',
  pictures: 'A picture',
};

/** Things of a list whose ids are no numbers. */
const eachNames: Readonly<Record<string, string>> = {
  reading: 'a reading',
  place: 'a place of a run',
  badplace: 'a bad place',
  across: 'a place between the walls',
  upright: 'a place between floor and ceiling',
  zone: 'not to be fastened into',
  way: 'on the way in',
  corner: 'a corner',
  foot: 'a foot',
  gap: 'a gap to the wall',
};

/** What lies between a thing and its figure: `runs/r2` is groove run 2, `columns/c1` column 1. */
function within(steps: readonly string[]): readonly string[] {
  const [table, id, ...rest] = steps;
  if (table === undefined || id === undefined) return [];
  const no = /\d+$/.exec(id)?.[0];
  const each = eachNames[table];
  if (each !== undefined) return [each, ...within(rest)];
  const names: Readonly<Record<string, string>> = {
    runs: 'groove run',
    wides: 'wide groove',
    inside: 'in a bay',
    built: 'opening',
    fronts: 'front',
    fitted: 'front',
    columns: 'column',
    pieces: 'piece',
    spoils: 'making',
    bay: 'bay',
  };
  return [[names[table] ?? table, no].filter(Boolean).join(' '), ...within(rest)];
}

type Own = (name: string) => boolean;

/** Who wrote it: this phone, the other, or which of the others that have a reading standing double. */
export function whoWrote(entry: Entry, own: Own, doubled: readonly Doubled[]): string {
  if (own(entry.device)) return 'this phone';
  const all = doubled.flatMap((one) => one.readings.map((e) => e.device));
  const others = [...new Set(all)].filter((name) => !own(name)).sort();
  return others.length === 1 ? 'the other phone' : `another phone, no. ${others.indexOf(entry.device) + 1}`;
}

/** Wall clock as that phone had it, for the eye only. @example whenSaid('2026-11-02T08:30:00.000Z') */
const whenSaid = (at: string): string =>
  new Date(at).toLocaleString(undefined, {
    month: 'short',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  });
