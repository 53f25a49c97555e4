import { add, half, isZero, type Length, negate, subtract, zero } from '../../src/length/length';
import { markAt, type Tape } from '../../src/length/tape';
import type { Plan } from '../../src/plan/plan';
import type { Part } from '../../src/trade/carcass/part';
import { layOut } from '../../src/trade/grooves/lay-out';
import { settingsFor } from '../../src/trade/grooves/settings';
import type { Shop } from '../../src/trade/machines/shop';
import type { Operation } from '../../src/trade/setups/operation';
import { placingOf } from '../../src/trade/setups/placing';

/**
 * The pieces of a plan as a careful hand would cut them: every printed figure with its remainder, every stack as wide
 * and as high as it is printed, every machine read backwards from what it is. Nothing of the layout is looked at.
 */
export type CutGroove = { readonly lo: Length; readonly hi: Length; readonly deep: Length };

export type CutLap = {
  readonly near: Length;
  readonly long: Length;
  readonly deep: Length;
  readonly show: string | undefined;
};

export type CutPiece = {
  readonly long: Length;
  readonly wide: Length;
  /** By the groove: what stands in it. From the reference end. */
  readonly grooves: ReadonlyMap<string, CutGroove>;
  /** Across the face from its edge or end, and into it. */
  readonly rabbets: ReadonlyMap<string, { readonly wide: Length; readonly deep: Length }>;
  /** Out of the lower end of the front edge. */
  readonly corner?: { readonly deep: Length; readonly high: Length } | undefined;
  /** Along an edge: how far from it, how wide, how deep; stopped, where it begins and ends. */
  readonly along: ReadonlyMap<
    string,
    {
      readonly near: Length;
      readonly wide: Length;
      readonly deep: Length;
      readonly from?: Length;
      readonly to?: Length;
    }
  >;
  /** Laps: near shoulder from the reference end, how long and deep, and how the face that is seen lies. */
  readonly laps: ReadonlyMap<string, CutLap>;
  /** Its ends that are mitred to their long points. */
  readonly mitres: readonly string[];
  /** At an end: how long, what is cut away beside it, and in which face. */
  readonly tongues: ReadonlyMap<
    string,
    { readonly long: Length; readonly shoulder: Length; readonly face: string | undefined }
  >;
  /** Lines that a part is set to with nothing cut for it: its near face, from the reference end. */
  readonly lines: ReadonlyMap<string, Length>;
};

/** A figure with all that its mark leaves. */
const honoured = ({ setup }: Operation): Length =>
  setup.figure ? add(setup.figure.value, setup.figure.rest) : zero;

/** Ids end in the cut and the copy: `cut/c~left/len/1`. */
const cutOf = ({ id, copy, part }: Operation): string =>
  id.slice(`cut/${part}/`.length, id.length - copy.length - 1);

export function cutPieces(plan: Plan, shop: Shop): ReadonlyMap<string, CutPiece> {
  return new Map(
    plan.parts.map((part) => {
      // the two faces of a partition are two copies to the saw
      const ops = plan.operations.filter((op) => op.part === part.id && /^[1AB]$/.test(op.copy));
      const figure = (what: Operation['what']) => {
        const op = ops.find((o) => o.what === what);
        return op ? honoured(op) : zero;
      };
      const long = figure('length');
      const grooves = new Map<string, CutGroove>();
      for (const op of ops.filter((o) => o.what === 'groove')) {
        const name = cutOf(op).replace(/~[^~]+$/, '');
        const lo = nearTeeth(op, { plan, shop, long });
        const hi = add(lo, op.setup.cutter ?? zero);
        const before = grooves.get(name);
        const deep = op.setup.height ?? zero;
        grooves.set(name, {
          lo: before && before.lo.compare(lo) < 0 ? before.lo : lo,
          hi: before && before.hi.compare(hi) > 0 ? before.hi : hi,
          deep,
        });
      }
      const rabbets = new Map(
        ops
          .filter((o) => o.what === 'rabbet' && o.which?.is !== 'tongue')
          .map((o) => [
            cutOf(o).slice('rabbet~'.length),
            { wide: honoured(o), deep: o.setup.height ?? zero },
          ]),
      );
      const along = new Map(
        ops
          .filter((o) => o.what === 'along')
          .map((o) => [
            cutOf(o).slice('along~'.length),
            {
              near: honoured(o),
              wide: o.setup.cutter ?? zero,
              deep: o.setup.height ?? zero,
              ...stopsOf(o, part, plan.job.tape),
            },
          ]),
      );
      const laps = new Map(
        ops
          .filter((o) => o.what === 'lap')
          .map((o) => [
            cutOf(o).slice('lap~'.length),
            {
              near: honoured(o),
              long: o.setup.cutter ?? zero,
              deep: o.setup.height ?? zero,
              show: o.placing?.face?.lies,
            },
          ]),
      );
      const notch = ops.find((o) => o.what === 'corner');
      const corner = notch && { deep: honoured(notch), high: upTo(notch) };
      const tongues = new Map(
        ops
          .filter((o) => o.which?.is === 'tongue')
          .map((o) => [
            cutOf(o).slice('tongue~'.length),
            { long: honoured(o), shoulder: o.setup.height ?? zero, face: o.placing?.face?.named },
          ]),
      );
      const lines = new Map(part.lines?.map(({ id, near }) => [id, near]));
      const mitres = ops.flatMap((o) => (o.which?.is === 'long-points' ? (o.which.ends ?? []) : []));
      const cut = { laps, mitres, grooves, rabbets, tongues, along, lines, corner };
      return [part.id, { long, wide: figure('rip'), ...cut }] as const;
    }),
  );
}

/** Where a stopped groove begins and ends, with all that the marks printed for it leave. */
function stopsOf({ which, id }: Operation, { along = [], length }: Part, tape: Tape) {
  const printed = which?.is === 'takes' ? which.stopped : undefined;
  if (!printed) return {};
  const own = along.find((groove) => id.includes(`/along~${groove.id}/`));
  if (!own?.from || !own.to) throw new Error(`${id} is stopped and its groove is not`);
  // the far stop goes to the tape as it stands off the far end
  const long = length.mark.value;
  for (const [mark, exact] of [
    [printed.from, own.from],
    [subtract(long, printed.to), subtract(long, own.to)],
  ] as const)
    if (!markAt(exact, tape).value.equals(mark)) throw new Error(`${id} is not stopped on its marks`);
  return { from: own.from, to: own.to };
}

/** How high up a notch at an end is sawn, with all that its mark leaves. */
const upTo = ({ which }: Operation): Length =>
  which?.is === 'corner' ? add(which.high.value, which.high.rest) : zero;

type At = { readonly plan: Plan; readonly shop: Shop; readonly long: Length };

/** Where the near teeth of a pass stand from the reference end, by what the machine is set to. */
function nearTeeth(op: Operation, { plan, shop, long }: At): Length {
  const figure = honoured(op);
  const cutter = op.setup.cutter ?? zero;
  const board = plan.parts.find((p) => p.id === op.part)?.board;
  if (!board) throw new Error('no board');
  switch (op.setup.sets) {
    case 'stop-to-near-teeth':
    case 'fence-mark':
      return figure;
    case 'other-stop-to-teeth':
      return subtract(subtract(long, figure), cutter);
    case 'fence-scale': {
      const grown = board.grows === 'toward' ? subtract(cutter, shop.single ?? zero) : zero;
      return subtract(figure, grown);
    }
    case 'guide-edge':
      return op.setup.machine === 'saw'
        ? alongShoe(op, board.guide, shop)
        : alongBase(op, { plan, shop, long });
    case 'spacer': {
      const farthest = plan.operations
        .filter((o) => o.part === op.part && o.what === 'groove' && isZero(o.setup.figure?.value ?? zero))
        .flatMap((o) => o.groove?.setting ?? []);
      const { settings } = settingsFor(layOut(board), { board, shop, tape: plan.job.tape });
      const stop = settings.find((s) => farthest.includes(s.id))?.nearTeeth;
      if (!stop) throw new Error('no stop for the spacers');
      return subtract(add(stop.value, stop.rest), figure);
    }
    default:
      throw new Error(`not cut here: ${op.setup.sets}`);
  }
}

/** A router's bit stands as far from its guide as the base and the strip between make it. */
function alongBase(op: Operation, { plan, shop }: At): Length {
  const board = plan.parts.find((p) => p.id === op.part)?.board;
  if (!board) throw new Error('no board');
  const { settings } = settingsFor(layOut(board), { board, shop, tape: plan.job.tape });
  const strip = settings.find((s) => s.id === op.groove?.setting)?.strip ?? zero;
  const centre = add(shop.routerBase ?? zero, strip);
  const fromGuide = board.guide === 'reference' ? centre : negate(centre);
  return subtract(add(honoured(op), fromGuide), half(op.setup.cutter ?? zero));
}

/** A circular saw's near tooth face stands one shoe from a guide on this side, a kerf and the other shoe beyond. */
const alongShoe = (op: Operation, guide: 'reference' | 'far', { shoeKeep, shoeWaste, kerf }: Shop): Length =>
  guide === 'reference'
    ? add(honoured(op), shoeKeep ?? zero)
    : subtract(subtract(honoured(op), shoeWaste ?? zero), kerf ?? zero);

/**
 * Which of two mirror images a groove makes of its piece: reference end to other end, front to back, out of the grooved
 * face, as the three axes lie on the machine. +1 or −1.
 *
 * You stand at it: X to your right, Y away from you, Z up. The end on the stop (fence, or measured) is at the stop's
 * hand, so the piece runs from there to the other hand; what leads is away from you, what is toward you is not.
 */
export function handOnMachine(op: Operation, end: string): 1 | -1 {
  const { face, leads, toYou, toStop, onFence, measured, marked, stop, fence } = placingOf(op);
  const held = [toStop, onFence, measured, marked].find((side) => side?.at === 'end');
  if (!face || !held || !stop) throw new Error(`not placed: ${op.id}`);
  const toRight = stop === 'left' ? 1 : -1;
  const alongX = held.named === end ? toRight : -toRight;
  // a sliding saw's fence is at the far side: the edge on it lies away
  const away = fence === 'far' ? onFence : leads;
  const frontAway = toYou ? toYou.named !== 'front' : away?.named === 'front';
  const frontToBackY = frontAway ? -1 : 1;
  const outZ = face.lies === 'up' ? 1 : -1;
  return (alongX * frontToBackY * outZ) as 1 | -1;
}
