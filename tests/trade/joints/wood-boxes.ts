import type { Part } from '../../../src/trade/carcass/part';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { edgesOf } from '../../../src/trade/joints/edges';
import type { HandHoles } from '../../../src/trade/joints/holes-by-hand';
import { l } from '../../length/write-figures';

/** A part in coordinates: every cut a box, counted in 6,400ths of an inch. */
export type Box = { readonly x: Range; readonly y: Range; readonly z: Range };
type Range = readonly [number, number];

export const grain = (x: { readonly s: bigint; readonly n: bigint; readonly d: bigint }) =>
  Number(x.s * x.n * 6400n) / Number(x.d);

/** Along from the reference end, across from the edge of the rows, down from the inner face. */
export function boxesIn(of: Part): readonly Box[] {
  const [x1, y1, z1] = [of.length.sum.value, of.width.sum.value, of.thickness ?? l('0')].map(grain) as [
    number,
    number,
    number,
  ];
  const [a, b] = edgesOf(of);
  const origin = b === 'front' ? b : a;
  const all = { x: [0, x1], y: [0, y1], z: [0, z1] } as const;
  const flip = (same: boolean, from: number, to: number, whole: number): Range =>
    same ? [from, to] : [whole - to, whole - from];
  const down = (deep: number, other = false): Range => (other ? [z1 - deep, z1] : [0, deep]);
  const beside = (at: string, named: string, from: number, to: number, run: Range = [0, x1]) =>
    at === 'end'
      ? { x: flip(named === of.end, from, to, x1), y: all.y }
      : { x: run, y: flip(named === origin, from, to, y1) };
  const run = ({
    from,
    to,
  }: {
    readonly from?: Parameters<typeof grain>[0] | undefined;
    readonly to?: Parameters<typeof grain>[0] | undefined;
  }): Range => [from ? grain(from) : 0, to ? grain(to) : x1];
  const boxes: Box[] = [];
  for (const g of of.board ? layOut(of.board).grooves : []) {
    const near = grain(g.near);
    const x: Range = [near, near + grain(g.width)];
    boxes.push({ x, y: [grain(g.stopped ?? l('0')), y1], z: down(grain(g.depth ?? l('0')), g.face === 'B') });
  }
  for (const r of of.rabbets)
    boxes.push({ ...beside(r.along.at, r.along.named, 0, grain(r.width), run(r)), z: down(grain(r.depth)) });
  for (const g of of.along ?? []) {
    const near = grain(g.near);
    const other = g.outside === true || g.face === 'B';
    boxes.push({
      ...beside(g.edge.at, g.edge.named, near, near + grain(g.width), run(g)),
      z: down(grain(g.depth), other),
    });
  }
  for (const n of of.notches) {
    const x: Range = [grain(n.near), grain(n.near) + grain(n.long)];
    boxes.push({ x, y: origin === 'front' ? [y1 - grain(n.deep), y1] : [0, grain(n.deep)], z: all.z });
  }
  for (const lap of of.laps) boxes.push({ ...all, x: [grain(lap.near), grain(lap.near) + grain(lap.long)] });
  const ends = of.name.role === 'side' ? ['front'] : [of.end, 'the other'];
  const endWide = of.endCut && (of.endCut.what === 'pins' ? l('1/2') : of.endCut.height);
  if (endWide) for (const end of ends) boxes.push({ ...all, x: flip(end === of.end, 0, grain(endWide), x1) });
  for (const t of of.tongues ?? []) boxes.push({ ...all, x: flip(t.end === of.end, 0, grain(t.long), x1) });
  for (const d of of.dowels ?? [])
    for (const end of d.both ? [of.end, 'the other'] : [d.at])
      for (const mark of d.marks) {
        const [r, from, deep, y] = [grain(d.thick) / 2, grain(d.from), grain(d.deep), y1 - grain(mark)];
        const [x, z] =
          d.in === 'face'
            ? [
                [from - r, from + r],
                [0, deep],
              ]
            : [
                [0, deep],
                [z1 - from - r, z1 - from + r],
              ];
        boxes.push({
          x: flip(end === of.end, x?.[0] ?? 0, x?.[1] ?? 0, x1),
          y: [y - r, y + r],
          z: [z?.[0] ?? 0, z?.[1] ?? 0],
        });
      }
  for (const bore of of.bores ?? []) {
    const r = grain(bore.dia) / 2;
    const [y, z] = [grain(bore.off), down(grain(bore.deep), bore.face === 'B')];
    for (const { at } of bore.holes) boxes.push({ x: [grain(at) - r, grain(at) + r], y: [y - r, y + r], z });
  }
  return boxes;
}

/** Whether all the holes of a row stay in the wood and come into none of the boxes. */
export function clear(of: Part, boxes: readonly Box[], said: HandHoles): boolean {
  const [x1, y1, z1] = [of.length.sum.value, of.width.sum.value, of.thickness ?? l('0')].map(grain);
  const [r, y, deep] = [grain(said.dia) / 2, grain(said.off), grain(said.deep)];
  if (y - r < 0 || y + r > (y1 ?? 0)) return false;
  return Array.from({ length: said.count }, (_, k) => grain(said.first) + k * grain(said.pitch)).every(
    (x) => {
      if (x - r < 0 || x + r > (x1 ?? 0)) return false;
      return boxes.every((box) => {
        if (x + r <= box.x[0] || box.x[1] <= x - r || y + r <= box.y[0] || box.y[1] <= y - r) return true;
        // how much wood is over it, seen from the face of the row
        const over = said.face === 'B' ? (z1 ?? 0) - box.z[1] : box.z[0];
        return over > 0 && deep < over;
      });
    },
  );
}

/** The edge its rows stand off. */
export const nearEdge = (of: Part): string => {
  const [first, second] = edgesOf(of);
  return second === 'front' ? second : first;
};

/** Whether two boxes share anything. */
export const overlap = (a: Box, b: Box): boolean =>
  (['x', 'y', 'z'] as const).every((way) => a[way][0] < b[way][1] && b[way][0] < a[way][1]);
