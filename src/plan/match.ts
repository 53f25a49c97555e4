import { editPart } from '../job/edits';
import type { Change } from '../job/entry';
import { absolute, add, equals, type Length, subtract } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { farthestKept, keptOff } from '../trade/carcass/kept-off';
import type { Part } from '../trade/carcass/part';
import { type Sizes, setBy } from '../trade/carcass/sizes';
import { type Change as Moved, noLongerFit, wouldChange } from '../trade/setups/changes';
import type { Operation } from '../trade/setups/operation';
import type { Sum } from '../trade/sums/sum';
import type { Checklist } from './checklist';
import type { Plan } from './plan';

/** A piece that came out otherwise: of which part, which way, and to what size. Inches. */
export type CameOut = { readonly part: Part; readonly way: 'length' | 'width'; readonly size: Length };

/** Why nothing can be made to match: nothing is measured off the piece, or it is too far off. Inches. */
export type NoMatch =
  | { readonly code: 'alone' }
  | { readonly code: 'too-far'; readonly by: Length; readonly most: Length };

/**
 * What makes the mates of a piece match the size it came to. One that sets its case across, up or deep moves the mark
 * the case is reckoned from, so that all that is not cut yet follows; a rail of the frame moves its equals, a stile the
 * other and what stands between the rails; a board that is made several times moves the others of it.
 *
 * @returns changes for one act; or why there are none
 * @example matchOf(plan, { part: bottom, way: 'length', size: l('29 1/16') })
 */
export function matchOf(plan: Plan, out: CameOut): Result<readonly Change[], NoMatch> {
  const { part, way, size } = out;
  const by = subtract(size, part[way].mark.value);
  const marks = setsCase(part, way)
    ? caseMarks(plan, out, by)
    : alike(plan, out).map((p) => markOf(p, way, by));
  if (marks.length === 0) return err({ code: 'alone' });
  if (marks.some(({ exact, to }) => !keptOff(exact, to)))
    return err({ code: 'too-far', by: absolute(by), most: farthestKept });
  return ok(marks.flatMap(({ id, to }) => editPart(id, { [field[way]]: to })));
}

const field = { length: 'mark', width: 'markWide' } as const;

/** A part, what it is by its sums, and the mark it is to have. Inches. */
type Mark = { readonly id: string; readonly exact: Length; readonly to: Length | undefined };

const markOf = (part: Part, way: CameOut['way'], by: Length): Mark => ({
  id: part.id,
  exact: part[way].sum.value,
  to: add(part[way].mark.value, by),
});

/** Which way a part sets its case by this size. */
function setsCase(part: Part, way: CameOut['way']): 'across' | 'up' | 'deep' | undefined {
  const spans = part[way].spans;
  if (!spans?.sets) return undefined;
  const { opening } = spans;
  return opening === 'across' || opening === 'up' || opening === 'deep' ? opening : undefined;
}

/** The part each way of a case is reckoned from. */
const settersOf = { across: 'bottom', up: 'left', deep: 'left' } as const;

/** The piece keeps its size, and what the case is reckoned from moves as far. */
function caseMarks(plan: Plan, { part, way, size }: CameOut, by: Length): readonly Mark[] {
  const sets = setsCase(part, way);
  const worked = plan.worked.get(part.of);
  if (!sets || !worked?.ok) return [];
  const { sizes } = worked.value;
  const setter = plan.parts.find((p) => p.id === `${part.of}~${settersOf[sets]}`);
  if (!setter) return [];
  const to = add(setter[way].mark.value, by);
  const own = { id: part.id, exact: part[way].sum.value, to: size };
  const right = `${part.of}~right`;
  const first = { id: setter.id, exact: drawnOf(sizes, sets), to };
  if (part.id === setter.id) return sets === 'across' ? [first] : [first, { ...first, id: right }];
  return part.id === right ? [first, { ...first, id: right }] : [first, { ...own, exact: size }];
}

/** What sets a case, by the drawing. Inches. */
const drawnOf = (sizes: Sizes, way: 'across' | 'up' | 'deep'): Length =>
  way === 'deep' ? (sizes.drawn ?? sizes).depth.value : setBy(sizes, way).exact;

/** What is made as long or as wide as a part that sets no case, itself among it. */
function alike({ parts }: Plan, { part, way }: CameOut): readonly Part[] {
  const { spans, sum } = part[way];
  const ofCase = parts.filter((p) => p.of === part.of);
  if (part.inFrame && way === 'length') {
    if (!spans) return ofCase.filter((p) => p.inFrame && p.end === part.end);
    const goes = (p: Part) => p.length.spans?.opening === spans.opening;
    // a rail half-lapped with its stiles is longer than what stands between them by as much as these are wide
    if (part.laps.length > 0)
      return ofCase.filter((p) => goes(p) && (p.laps.length > 0 || !asBuilt(p.length.sum)));
    const equal = ofCase.filter((p) => goes(p) && equals(p.length.sum.value, sum.value));
    return equal.length > 1 ? equal : [];
  }
  return part.of === '' && part.copies > 1 ? [part] : [];
}

/** Whether a length between stiles is that of their opening as measured: it follows no mark. */
const asBuilt = ({ terms }: Sum): boolean =>
  terms.some(({ what, from }) => what === 'frame-opening-as-built' || (from && asBuilt(from)));

/** What matching comes to: what is not cut yet and moves, and what is cut already and by how much it is off. */
type Matched = { readonly moved: readonly Moved[]; readonly off: readonly Moved[] };

/** @param list as it stands; @param after the operations as they would be */
export function matchedBy({ plan, doing, cutTo }: Checklist, after: readonly Operation[]): Matched {
  const moves = new Set(after.filter((op) => !sameFigure(op, plan.byId.get(op.id))).map((op) => op.id));
  return {
    moved: wouldChange(plan.operations, after, doing.done),
    off: noLongerFit(after, cutTo).filter(({ op }) => moves.has(op.id)),
  };
}

const sameFigure = (a: Operation, b: Operation | undefined): boolean =>
  b !== undefined && equals(a.figure, b.figure);
