import { isPositive, type Length, subtract, times, zero } from '../../length/length';
import { cutsFor } from '../joints/joint';
import { lap } from '../joints/joints';
import { flushLaps, lappedFrame } from '../joints/laps';
import { given, plus, type Sum, sumOf } from '../sums/sum';
import { backPart } from './back';
import { throughBack } from './back-how';
import { frameOf } from './frame';
import { lapsOfFrame } from './frame-laps';
import { pastOf } from './meetings';
import { nailerParts } from './nailers';
import { type Making, partOf, rabbetToRabbet } from './panels';
import type { Part } from './part';
import type { SingleRole } from './part-name';
import { plinthParts } from './plinth';
import { lengthIn } from './sizes';
import { toePart } from './toe';
import { usualOf } from './usual';

/** Back, cleats, face frame, toe board, loose top, edging and base frame: what goes round the carcass. */
export function roundIt(making: Making): readonly Part[] {
  const { case: c } = making.sizes;
  return [
    ...(c.hasBack ? [backPart(making)] : []),
    ...nailerParts(making),
    ...(c.cleats > 0 ? [cleat(making)] : []),
    ...(c.hasFrame ? framePieces(making) : []),
    ...(c.hasToe && c.feet && isPositive(c.feet) ? [toePart(making)] : []),
    ...(c.hasLooseTop ? [looseTop(making)] : []),
    ...(c.hasEdging ? edging(making) : []),
    ...(c.hasBase ? base(making) : []),
    ...plinthParts(making),
  ];
}

/** Fitted in length alone, or to no opening at all. */
const toLength = { stage: 'after-dry-fit', fitted: 'length' } as const;
const anyTime = { stage: 'any-time' } as const;

function cleat(making: Making): Part {
  const { sizes } = making;
  const { case: c } = sizes;
  return partOf(making, {
    role: 'cleat',
    stock: 'cleat',
    length: lengthIn(sizes, 'across', (by) => rabbetToRabbet(by, 'cleat')),
    spans: { length: 'across' },
    width: given('cleat', c.cleatWide ?? usualOf(c).cleatWide),
    copies: c.cleats,
    end: 'left',
    stage: 'carcass',
  });
}

function framePieces(making: Making): readonly Part[] {
  const { case: c } = making.sizes;
  const frame = frameOf(making.sizes);
  const laps = lapsOfFrame(making.sizes, frame);
  const { stile, middle, top } = frame.pieces;
  const strip = (piece: Omit<Parameters<typeof partOf>[1], 'stock' | 'stage'>, comesOff = false): Part => ({
    ...partOf(making, { stock: 'frame', ...toLength, ...piece }),
    strip: true,
    comesOff,
  });
  const rail = { length: frame.rails, spans: { length: 'frame', sets: true }, end: 'left' } as const;
  const upright = { role: 'stile', copies: 2, length: frame.height, end: 'bottom' } as const;
  const inner = { role: 'middle', copies: c.partitions, length: frame.uprights, end: 'bottom' } as const;
  return [
    { ...strip({ ...upright, width: given('stile', stile) }, c.stilesOff), ...laps.stile },
    { ...strip({ ...rail, role: 'railtop', width: given('top-rail', top) }), ...laps.rail },
    { ...strip({ ...rail, role: 'railbottom', width: frame.bottomRail }), ...laps.rail },
    ...(c.partitions > 0
      ? [{ ...strip({ ...inner, width: given('middle-stile', middle) }, c.middleOff), ...laps.middle }]
      : []),
  ];
}

/** Long and deep of the loose top, and what edging goes round where there is none: the case's own top. */
function topSizes({ sizes }: Making): { readonly long: Sum; readonly deep: Sum } {
  const { case: c, thick } = sizes;
  const side = c.looseSide ?? usualOf(c).looseOver;
  const front = c.looseFront ?? usualOf(c).looseOver;
  return {
    long: sumOf(
      plus('outside-width', sizes.width.value, sizes.width),
      plus('past-each-side', times(side, 2n)),
    ),
    deep: sumOf(
      ...throughBack(sizes).terms,
      plus('face-frame', c.hasFrame ? thick('frame') : zero),
      plus('past-front', front),
    ),
  };
}

function looseTop(making: Making): Part {
  const { long, deep } = topSizes(making);
  return partOf(making, {
    role: 'loose',
    stock: 'loose',
    length: long,
    width: deep,
    end: 'left',
    ...anyTime,
  });
}

/** Strips round the top: as wide as what they cover and the lip, mitred ends running out to the long point. */
function edging(making: Making): readonly Part[] {
  const { sizes } = making;
  const { case: c, thick } = sizes;
  const { long, deep } = topSizes(making);
  const width = sumOf(
    plus(c.hasLooseTop ? 'loose-top' : 'top', c.hasLooseTop ? thick('loose') : thick('top')),
    plus('base-frame', c.hasBase ? thick('base') : zero),
    plus('lip', c.lip ?? zero),
  );
  const piece = (role: SingleRole, edge: Sum, mitres: number): Part => {
    const strip = partOf(making, { role, stock: 'edging', length: edge, width, end: 'left', ...anyTime });
    const point = sumOf(
      plus('edge', edge.value, edge),
      plus({ code: 'mitred-ends', count: mitres }, times(thick('edging'), BigInt(mitres))),
    );
    return mitres === 0 ? { ...strip, strip: true } : { ...strip, strip: true, longPoint: point };
  };
  const ends = c.mitres > 0 ? 1 : 0;
  const shortEdge = c.hasLooseTop ? deep : sizes.depth;
  const front = c.hasLooseTop ? long : sizes.width;
  return [
    piece('edgefront', front, c.mitres),
    ...(c.mitres > 0 ? [piece('edgeleft', shortEdge, ends), piece('edgeright', shortEdge, ends)] : []),
  ];
}

/** Lapped frame: rails the full width, cross members the full depth, let into each other flush on the show face. */
function base(making: Making): readonly Part[] {
  const { sizes } = making;
  const { case: c } = sizes;
  const wide = c.crossWide ?? usualOf(c).crossWide;
  const of = { width: given('width-said', wide), ...anyTime } as const;
  const rail = partOf(making, {
    role: 'baserail',
    stock: 'base',
    copies: 2,
    length: baseLong(sizes),
    end: 'left',
    ...of,
  });
  const cross = partOf(making, {
    role: 'basecross',
    stock: 'cross',
    copies: c.crosses,
    length: sizes.depth,
    end: 'front',
    ...of,
  });
  const { inRails, inCross } = baseLaps(sizes, wide, { rail, cross });
  return [
    { ...rail, laps: inRails, mates: [cross.id], strip: true },
    { ...cross, laps: inCross, mates: [rail.id], strip: true },
  ];
}

/** The laps of rails and cross members in each other. */
function baseLaps(
  sizes: Making['sizes'],
  wide: Length,
  { rail, cross }: { readonly rail: Part; readonly cross: Part },
): { readonly inRails: Part['laps']; readonly inCross: Part['laps'] } {
  const plan = lappedFrame(basePlan(sizes));
  const laps = flushLaps({
    under: { thickness: sizes.thick('base'), width: wide },
    over: { thickness: sizes.thick('cross'), width: wide },
  });
  if (!laps.ok) return { inRails: [], inCross: [] };
  const lapsAt = (nears: readonly Length[], depth: Length, mate: Part) =>
    cutsFor(
      nears.map((near, k) => ({
        joint: lap,
        seat: {
          id: `lap${k + 1}`,
          called: mate.stock ?? 'cross',
          near,
          thick: wide,
          depth,
          fits: mate.stuff,
        },
      })),
    ).laps;
  const ends = [zero, subtract(sizes.depth.value, wide)];
  return {
    inRails: lapsAt(plan.ok ? plan.value.nears : [], laps.value.depthUnder, cross),
    inCross: lapsAt(ends, laps.value.depthOver, rail),
  };
}

/** As long as the case is wide where it stands: a bottom past the sides lies on it whole. */
const baseLong = ({ case: c, width }: Making['sizes']): Sum =>
  sumOf(plus('outside-width', width.value, width), plus('past-each-side', times(pastOf(c, 'bottom'), 2n)));

/** The base frame's outline, as its laps are reckoned from. Inches. */
export const basePlan = (sizes: Making['sizes']) => ({
  long: baseLong(sizes).value,
  deep: sizes.depth.value,
  cross: sizes.case.crossWide ?? usualOf(sizes.case).crossWide,
  count: sizes.case.crosses,
});
