import { zero } from '../../length/length';
import type { Part } from '../carcass/part';
import { type Operation, opId, type What } from './operation';
import { setupOf } from './setup';

/** The dry-fit of a case: what stands up is measured before what goes into it is cut. */
export const dryFitId = (of: string): string => opId(`${of}~bench`, 'dryfit', '1');

type Of = {
  readonly parts: readonly Part[];
  readonly cases: readonly { readonly id: string; readonly name: string }[];
};

/** Things by a word, each list in the order they were in. */
function listsBy<T>(things: readonly T[], wordOf: (thing: T) => string): ReadonlyMap<string, readonly T[]> {
  const lists = new Map<string, T[]>();
  for (const thing of things) {
    const word = wordOf(thing);
    const list = lists.get(word);
    if (list) list.push(thing);
    else lists.set(word, [thing]);
  }
  return lists;
}

/**
 * What is done to each case at the bench: dry-fit, square and measure; finish the inside; glue up; frame on.
 *
 * @param all operations on the parts, by which each step knows what comes first
 */
export function benchSteps({ parts, cases }: Of, all: readonly Operation[]): readonly Operation[] {
  const ofPart = new Map(parts.map(({ id, of }) => [id, of]));
  const partsOf = listsBy(parts, ({ of }) => of);
  const workOf = listsBy(all, ({ part }) => ofPart.get(part) ?? '');
  return cases.flatMap((c) => stepsOf(c, partsOf.get(c.id) ?? [], workOf.get(c.id) ?? []));
}

/** A back in grooves all round goes in before the last part is on; under no top it slides in when all stands. */
function backIn(parts: readonly Part[]): Pick<Operation, 'which'> {
  const grooved = parts.some(({ along = [] }) => along.some(({ takes }) => takes.part === 'back'));
  if (!grooved) return {};
  const hasTop = parts.some(({ name }) => name.role === 'top');
  return { which: { is: 'back-in', last: hasTop ? 'side' : 'back' } };
}

/** The steps of one case, by its own parts and the work on them. */
function stepsOf(c: Of['cases'][number], parts: readonly Part[], work: readonly Operation[]) {
  const of = (wanted: (part: Part) => boolean): readonly string[] => {
    const ids = new Set(parts.filter(wanted).map((p) => p.id));
    return work.filter((op) => ids.has(op.part)).map((op) => op.id);
  };
  const step = (what: What, after: readonly string[]): Operation => ({
    id: opId(`${c.id}~bench`, what.replaceAll('-', ''), '1'),
    part: `${c.id}~bench`,
    copy: '1',
    name: { of: { role: 'case', named: c.name } },
    what,
    setup: setupOf({ machine: 'bench', on: { at: 'own', id: `${c.id} ${what}` } }),
    figure: zero,
    after,
  });
  const carcass = of((p) => p.stage === 'carcass');
  if (carcass.length === 0) return [];
  const fit = step('dry-fit', carcass);
  const inside = of((p) => p.stage === 'after-dry-fit' && p.stock === 'back');
  const finish = step('finish-inside', [fit.id, ...inside]);
  const glue = { ...step('glue-up', [finish.id]), ...backIn(parts) };
  const strips = of((p) => p.inFrame);
  const frame = strips.length > 0 ? [step('frame-on', [glue.id, ...strips])] : [];
  return [fit, finish, glue, ...frame];
}
