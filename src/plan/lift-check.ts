import type { LiftNotes } from '../job/loads';
import { type Ratio, ratio } from '../length/length';
import type { Result } from '../length/result';
import { type LiftError, type LiftSays, liftSays } from '../trade/loads/lift';
import { type LiftCure, liftCures } from '../trade/loads/lift-cures';
import { slabWeight } from '../trade/loads/stuff';
import { stuffOf } from './parts-of-job';
import type { Plan } from './plan';
import { weighedAs } from './stuff-of';
import { type CaseWeights, mostOf } from './weights-plan';

/** A load that may be lifted by itself. Pounds. */
export type Liftable =
  | { readonly code: 'case' | 'part'; readonly id: string; readonly pounds: Ratio }
  | {
      readonly code: 'drawer' | 'full-drawer';
      readonly id: string;
      readonly drawer: number;
      readonly pounds: Ratio;
    }
  | { readonly code: 'sheet'; readonly id: string; readonly name: string; readonly pounds: Ratio };

/** What is lifted by itself: the case empty, each drawer empty and with its things, what is loose, a sheet. */
export function liftables(plan: Plan, own: CaseWeights): readonly Liftable[] {
  const { weights, drawers } = own;
  if (!weights.ok) return [];
  const { sums, pieces } = weights.value;
  return [
    { code: 'case', id: 'case', pounds: sums.case.add(sums.hardware) as Ratio },
    ...drawers.map((x, k) => ({ code: 'drawer', id: `box ${x.id}`, drawer: k, pounds: x.empty }) as const),
    ...drawers.flatMap((x, k) =>
      x.things.n > 0n || x.unweighed > 0
        ? [{ code: 'full-drawer', id: `full ${x.id}`, drawer: k, pounds: x.full } as const]
        : [],
    ),
    ...pieces
      .filter((x) => x.of === 'loose')
      .map((x) => ({ code: 'part', id: x.id, pounds: x.one }) as const),
    ...sheetsOf(plan),
  ];
}

/** Sheets of the job whose size and thickness are known. */
const sheetsOf = ({ job }: Plan): readonly Liftable[] =>
  job.stock.flatMap((stock) => {
    const [stuff] = stuffOf(stock);
    const { long, wide } = stock;
    if (stock.kind !== 'sheet' || !stuff || !long || !wide) return [];
    const pounds = slabWeight({ long, wide, thick: stuff.thickness, ...weighedAs(job)(stock.id) });
    return [{ code: 'sheet', id: `sheet ${stock.id}`, name: stock.name, pounds } as const];
  });

/** What of a lift nobody said yet; it is asked for. */
type LiftBlank = 'out' | 'up' | 'toOut' | 'toUp' | 'grip';

type LiftFound = {
  readonly asked: readonly LiftBlank[];
  readonly says?: Result<LiftSays, LiftError>;
  readonly cures: ReturnType<typeof liftCures>;
};

/** What takes weight out of a load, where something is in it that comes out. */
const emptied: readonly LiftCure['code'][] = ['take-out', 'trips'];

/**
 * One lift by one person as it is said; nothing is reckoned before all of it is. Out of an empty case, an empty drawer,
 * a tray or a sheet nothing is taken to make it lighter.
 */
export function liftOf(
  plan: Plan,
  notes: LiftNotes,
  { code, pounds: load }: Pick<Liftable, 'code' | 'pounds'>,
): LiftFound {
  const { out, up, toOut, toUp, grip, turn = ratio(0n), toTurn = ratio(0n), careful = false } = notes;
  if (!out || !up || !toOut || !toUp || !grip) {
    const said = { out, up, toOut, toUp, grip };
    const asked = (['out', 'up', 'toOut', 'toUp', 'grip'] as const).filter((blank) => !said[blank]);
    return { asked, cures: [] };
  }
  const lift = {
    start: { out, up, turn },
    end: { out: toOut, up: toUp, turn: toTurn },
    careful,
    grip,
    load,
    most: mostOf(plan.job),
  };
  const cures = liftCures(lift).filter((cure) => code === 'full-drawer' || !emptied.includes(cure.code));
  return { asked: [], says: liftSays(lift), cures };
}
