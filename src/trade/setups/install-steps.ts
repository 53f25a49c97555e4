import { zero } from '../../length/length';
import { isFiller } from '../carcass/filler';
import type { Part } from '../carcass/part';
import type { Thing } from '../carcass/part-name';
import { type CleatOn, type Operation, opId, type What } from './operation';
import { setupOf } from './setup';
import type { Which } from './which';

/** Where something is put up: a case of the job, or a bank of drawers in a case that is none of the job's. */
type Place = { readonly id: string; readonly named: string; readonly banks: readonly string[] };

/** What closes a case to the walls: an edge that is scribed, a strip beside it. */
export type Closing = 'scribe' | 'filler';

type Of = {
  readonly cases: readonly { readonly id: string; readonly name: string }[];
  readonly banks: readonly { readonly id: string; readonly of?: string | undefined }[];
  /** In the order of the work; none where the room asks for none. */
  readonly closing?: ((id: string) => readonly Closing[]) | undefined;
  /** Where the cleat of a case is; nothing while nobody spoke of one. */
  readonly cleat?: ((id: string) => CleatOn | undefined) | undefined;
};

/** What stands at the bench of a place once, as the last part of its id: frozen, ticks are kept under it. */
const spelled = {
  'carry-in': 'carryin',
  level: 'level',
  scribe: 'scribe',
  filler: 'filler',
  cleat: 'cleat',
  anchor: 'anchor',
  'check-again': 'checkagain',
  finish: 'finish',
  cure: 'cure',
  load: 'load',
  label: 'label',
  'look-back': 'lookback',
} as const satisfies Partial<Record<What, string>>;

type InstallStep = keyof typeof spelled;

/** A step of putting up: heavy things in hand, and no figure at a machine. */
export const isPutUp = (what: What): boolean => what in spelled;

/** The bench of the whole job. */
const ofJob = '';

/** A step of putting up. @example installId('c1', 'level') // 'cut/c1~bench/level/1' */
export const installId = (place: string, what: InstallStep): string =>
  opId(`${place}~bench`, spelled[what], '1');

/** The job looked back at, once. */
export const lookBackId = installId(ofJob, 'look-back');

/** Where a bank is put up: its case, or itself. */
export const placeOfBank = ({ id, of }: Of['banks'][number]): string => of ?? id;

/** Every place of a job where something is put up: its cases, then banks in cases that are none of the job's. */
function placesOf({ cases, banks }: Of, worked: (of: string) => boolean): readonly Place[] {
  const ids = [...cases.map((c) => c.id), ...banks.map(placeOfBank)];
  return [...new Set(ids)].flatMap((id): readonly Place[] => {
    const own = banks.filter((bank) => placeOfBank(bank) === id).map((bank) => bank.id);
    const named = cases.find((c) => c.id === id)?.name ?? '';
    return own.length > 0 || worked(id) ? [{ id, named, banks: own }] : [];
  });
}

type Step = {
  readonly place: string;
  readonly on: Thing;
  readonly what: InstallStep;
  readonly which?: Which;
};

const step = ({ place, on, what, which }: Step, after: readonly string[]): Operation => ({
  id: installId(place, what),
  part: `${place}~bench`,
  copy: '1',
  name: { of: on },
  what,
  ...(which ? { which } : {}),
  setup: setupOf({ machine: 'bench', on: { at: 'own', id: `${place || 'job'} ${what}` } }),
  figure: zero,
  after,
});

/**
 * Steps of putting up before the fronts go on, and after the last pull: carried in, levelled, closed to the walls where
 * they ask for it, anchored, checked again once all is tightened, for a twisted case changes every reveal; then
 * finished, cured, loaded, labelled; and the whole job looked back at. A cleat that is on the wall is screwed there
 * before the case is set before it; one in the case is screwed by the anchoring itself. Nothing is loaded that is not
 * anchored, whatever else was let go ahead.
 *
 * @param of cases and banks; @param parts those of the cases; @param done operations by which each step knows what
 * comes first
 * @returns steps before and after the fronts
 */
export function installSteps(
  of: Of,
  parts: readonly Part[],
  done: readonly Operation[],
): { readonly standing: readonly Operation[]; readonly finishing: readonly Operation[] } {
  const cut = new Set(parts.filter((p) => p.stage === 'carcass').map((p) => p.of));
  const places = placesOf(of, (id) => cut.has(id));
  const idsOf = idsBy(done);
  const finishing = places.flatMap((place) => finished(place, of, { parts, idsOf }));
  const last = finishing.filter(({ what }) => what === 'load' || what === 'label').map(({ id }) => id);
  const back = step({ place: ofJob, on: { role: 'job' }, what: 'look-back' }, last);
  return {
    standing: places.flatMap((place) => stood(place, of, parts, idsOf)),
    finishing: places.length > 0 ? [...finishing, back] : [],
  };
}

type IdsOf = (part: string, what?: readonly What[]) => readonly string[];

function idsBy(done: readonly Operation[]): IdsOf {
  const byPart = new Map<string, Operation[]>();
  for (const op of done) {
    const list = byPart.get(op.part);
    if (list) list.push(op);
    else byPart.set(op.part, [op]);
  }
  return (part, what) =>
    (byPart.get(part) ?? []).filter((op) => !what || what.includes(op.what)).map((op) => op.id);
}

type Made = { readonly parts: readonly Part[]; readonly idsOf: IdsOf };

type At = (what: InstallStep, after: readonly string[]) => Operation;

/** Steps of one place; where it has no drawers they say so. */
function stepsAt({ id, banks }: Place, on: Thing, parts: readonly Part[]): At {
  const trays = parts.some((p) => p.of === id && p.stock === 'tray');
  const which: { readonly which?: Which } = banks.length > 0 ? {} : { which: { is: 'no-drawers', trays } };
  return (what, after) => step({ place: id, on, what, ...which }, after);
}

const bases: readonly string[] = ['baserail', 'basecross', 'plinthrail', 'plinthcross'];
const isBase = ({ name }: Part): boolean => bases.includes(name.role);

/** Boxes are hung in the shop; drawers come out again to carry the case. Whose case it is not, nobody carries it. */
function stood(place: Place, of: Of, parts: readonly Part[], idsOf: IdsOf): readonly Operation[] {
  const on: Thing = { role: 'case', named: place.named };
  const at = stepsAt(place, on, parts);
  const hung = place.banks.flatMap((bank) => idsOf(`${bank}~bench`, ['hang', 'stop-block']));
  const base = parts.filter((p) => p.of === place.id && isBase(p)).flatMap(({ id }) => idsOf(id));
  const built = idsOf(`${place.id}~bench`, ['glue-up', 'frame-on']);
  const own = of.cases.some((c) => c.id === place.id);
  const cleatOn = own ? of.cleat?.(place.id) : undefined;
  const carry = own ? [at('carry-in', [...built, ...hung, ...base])] : [];
  const onWall = cleatOn === 'wall' ? [at('cleat', idsIn(carry))] : [];
  const level = at('level', [...idsIn(carry), ...idsIn(onWall), ...hung]);
  const strips = parts.filter((p) => p.of === place.id && isFiller(p)).flatMap(({ id }) => idsOf(id));
  const closing = own ? closed(at, of.closing?.(place.id) ?? [], { level, strips }) : [];
  const fast = at('anchor', idsIn([level, ...closing]));
  const anchor = cleatOn ? { ...fast, cleat: cleatOn } : fast;
  return [...carry, ...onWall, level, ...closing, anchor, at('check-again', [anchor.id])];
}

const idsIn = (ops: readonly Operation[]): readonly string[] => ops.map(({ id }) => id);

type Before = { readonly level: Operation; readonly strips: readonly string[] };

/** Scribed when it stands plumb; a strip, cut before, waits for the edge, for scribing moves the case to its wall. */
function closed(at: At, closing: readonly Closing[], { level, strips }: Before): readonly Operation[] {
  const scribed = closing.includes('scribe') ? [at('scribe', [level.id])] : [];
  const filled = closing.includes('filler') ? [at('filler', [...idsIn([level, ...scribed]), ...strips])] : [];
  return [...scribed, ...filled];
}

/** Finish goes on when nothing more is cut or bored; what goes in waits until that has cured. */
function finished(place: Place, of: Of, { parts, idsOf }: Made): readonly Operation[] {
  const on: Thing = { role: 'case', named: place.named };
  const at = stepsAt(place, on, parts);
  const fronts = place.banks.flatMap((bank) => idsOf(`${bank}~bench`, ['front-on', 'pulls']));
  const cuts = parts.filter((p) => p.of === place.id).flatMap(({ id }) => idsOf(id));
  const onWall = of.cleat?.(place.id) === 'wall' ? (['cleat'] as const) : [];
  const fast = [...onWall, 'anchor' as const, 'check-again' as const].map((what) =>
    installId(place.id, what),
  );
  const finish = at('finish', [...fast, ...cuts, ...fronts]);
  const cure = at('cure', [finish.id]);
  return [finish, cure, at('load', [...fast, cure.id]), at('label', [cure.id])];
}
