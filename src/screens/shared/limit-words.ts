import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { TooSmall } from '../../trade/machines/least-sizes';
import type { Ask, Lack, Need, Way } from '../../trade/machines/limits';
import type { Taker } from '../../trade/machines/own-machine';
import type { plateAt } from '../../trade/machines/plate';
import type { Remedy } from '../../trade/machines/remedies';
import type { OwnMachine, ShopField, Tool } from '../../trade/machines/shop';
import { capital } from './capital';
import { ownName } from './machines/machine-names';
import { shopFields } from './shop-field-words';

export const toolNames: Readonly<Record<Tool, string>> = {
  fence: 'Rip fence',
  sled: 'Sled',
  sliding: 'Sliding saw',
  router: 'Router and guide',
  circular: 'Circular saw and guide',
  table: 'Router table',
  plunge: 'Plunge saw on its guide',
  press: 'Drill press',
  plate: 'Plate joiner',
};

/** A tool, or a machine of the shop's own as the user calls it. */
export const takerName = (taker: Taker): string =>
  typeof taker === 'string' ? toolNames[taker] : ownName(taker);

type Hangs = { readonly over: 'behind' | 'beside'; readonly by: Length };

const at = (x: Length, tape: Tape): string => writeMark(markAt(x, tape), tape);

/** A figure of the shop that is short, by how much. */
const short: Partial<Record<ShopField, (by: string) => string>> = {
  capacity: (by) => `the rip fence is ${by} short`,
  tableHeight: (by) => `the blade stands ${by} too low`,
  sledCross: (by) => `the piece is ${by} too wide for the sled`,
  stopReach: (by) => `the stop of the sled is ${by} short`,
  slidingCross: (by) => `the piece is ${by} too wide for the sliding saw`,
  slidingStop: (by) => `the stop of the sliding saw is ${by} short`,
  slidingHeight: (by) => `the piece is ${by} too thick for the sliding saw`,
  routerReach: (by) => `the bit reaches ${by} too little`,
  routerGuide: (by) => `the router guide is ${by} short`,
  circularDepth: (by) => `the circular saw cuts ${by} too shallow`,
  circularGuide: (by) => `the saw guide is ${by} short`,
  pressThroat: (by) => `the drill press reaches ${by} too little`,
  pressStroke: (by) => `its stroke is ${by} short`,
  pressBit: (by) => `the bit is ${by} too large for its chuck`,
  plateDeep: (by) => `the plate joiner plunges ${by} too little`,
  plateFence: (by) => `the fence of the plate joiner is ${by} short`,
};

/** The same of a machine of the shop's own, whose name stands before it. */
const ownShort: typeof short = {
  sledCross: (by) => `the piece is ${by} too wide for it`,
  stopReach: (by) => `its stop is ${by} short`,
  slidingCross: (by) => `the piece is ${by} too wide for it`,
  slidingStop: (by) => `its stop is ${by} short`,
  slidingHeight: (by) => `the piece is ${by} too thick for it`,
  circularDepth: (by) => `it cuts ${by} too shallow`,
  pressThroat: (by) => `it reaches ${by} too little`,
  plateDeep: (by) => `it plunges ${by} too little`,
  plateFence: (by) => `its fence is ${by} short`,
};

const plungeShort = (field: ShopField, by: string): string =>
  field === 'circularGuide' ? `the guide is ${by} short` : `it cuts ${by} too shallow`;

function lackWords(lack: Lack, { tool, own }: Pick<Way, 'tool' | 'own'>, tape: Tape): string {
  switch (lack.code) {
    case 'short':
      if (lack.onEdge) return `the piece, stood on edge, is ${at(lack.by, tape)} too high`;
      if (tool === 'plunge') return plungeShort(lack.field, at(lack.by, tape));
      if (tool === 'table' && lack.field === 'capacity') return `the fence is ${at(lack.by, tape)} short`;
      return ((own && ownShort[lack.field]) ?? short[lack.field])?.(at(lack.by, tape)) ?? '';
    case 'cutter-too-wide':
      return `the bit is ${at(lack.by, tape)} too wide`;
    case 'cutter-too-narrow':
      return `the bit is ${at(lack.by, tape)} too narrow`;
    case 'unsteady':
      return `the piece turns at the fence, ${at(lack.by, tape)} too little lies along it`;
    case 'no-stack':
      return own ? 'it takes no stack' : 'the sliding saw takes no stack';
    default:
      return assertNever(lack);
  }
}

/** What a machine lacks for a cut; nothing where it lacks nothing. @example 'The rip fence is 4 short.' */
export function lacksText(way: Way, tape: Tape): string {
  const { lacks, own } = way;
  const each = lacks.map((lack) => lackWords(lack, way, tape)).join('; ');
  if (each === '') return '';
  return own ? `${ownName(own)}: ${each}.` : `${capital(each)}.`;
}

/** What is not known of a machine, to be measured once. */
export const asksText = (asks: readonly Ask[], own?: OwnMachine): string =>
  asks.length === 0
    ? ''
    : `Measure once for ${own ? ownName(own) : 'the shop'}: ${asks.map(({ field }) => shopFields[field].toLowerCase()).join(', ')}`;

const fromOther: Readonly<Record<Need['cut'], string>> = {
  rip: ', the rest of the sheet on the fence,',
  crosscut: ', the other piece on the stop,',
  groove: ', the other end on it,',
  edge: '',
  along: '',
  stopped: '',
  shoulder: '',
  bore: '',
  slot: '',
};

/** A machine with its figure and passes. @example 'Sled, the other piece on the stop, at 29 3/8' */
function wayText(way: Way, need: Need, tape: Tape): string {
  const other = way.from === 'other' ? fromOther[need.cut] : '';
  const figure = way.figure ? ` at ${at(way.figure, tape)}` : '';
  const lines = way.lines > 1 ? `, ${way.lines} passes side by side` : '';
  const depths = way.depths > 1 ? `, ${way.depths} depths` : '';
  return `${takerName(way.own ?? way.tool)}${other}${figure}${lines}${depths}`;
}

/** The machine that can, as a line or the button that moves the cut there; the act as undo names it. */
export const insteadText = (way: Way, need: Need, tape: Tape): string =>
  `Use instead: ${wayText(way, need, tape)}`;
export const movedTo = (taker: Taker): string => `Cut on another machine: ${takerName(taker)}`;

/** How a plate joiner is brought to slots across a face. */
export function plateText(set: ReturnType<typeof plateAt>, tape: Tape): string {
  if (set.by === 'fence') return 'Its fence on the end.';
  return set.at
    ? `Straightedge at ${at(set.at, tape)}, the base of the joiner against its far side.`
    : 'The base of the joiner against a straightedge, nearer to the end by as much as its cutter stands off that base.';
}

/** What would do where no machine of the shop can. */
export function remedyText(remedy: Remedy, tape: Tape): string {
  const says = wouldText(remedy, tape);
  return remedy.own ? `${ownName(remedy.own)}: ${says.charAt(0).toLowerCase()}${says.slice(1)}` : says;
}

function wouldText(remedy: Remedy, tape: Tape): string {
  switch (remedy.code) {
    case 'both-faces':
      return `Cut from both faces, ${at(remedy.each, tape)} deep each.`;
    case 'two-passes':
      return `Rip it in two passes, ${at(remedy.each, tape)} high each, turned over between, the same edge on the fence.`;
    case 'relief-cut':
      return 'Cut it rough first with the circular saw, then to size.';
    case 'block':
      return `Use the mitre gauge off a block on the fence: pieces up to ${at(remedy.longest, tape)}.`;
    case 'bit':
      return `Take a bit no wider than ${at(remedy.most, tape)} that reaches ${at(remedy.reach, tape)}.`;
    case 'other-end':
      return `Turned round it is within reach: ${at(remedy.figure, tape)} to the near teeth, the other end on the stop or the other edge on the fence.`;
    case 'template':
      return 'Use a template, or a plunge router along a guide.';
    default:
      return assertNever(remedy);
  }
}

/** A piece that is small for its machine: by how much, and what to do. The tool's manual comes first. */
export function tooSmallText(small: TooSmall, tape: Tape): string {
  const least = at(small.least, tape);
  switch (small.code) {
    case 'short-along-fence':
      return `Under ${least} along the fence, by ${at(small.by, tape)}: cut it from a longer piece, or on the sled. The tool’s manual first.`;
    case 'push-block':
      return `Narrower than ${least}, by ${at(small.by, tape)}: push it with a block. The tool’s manual first.`;
    case 'narrow-strip':
      return `Under ${least} wide, by ${at(small.by, tape)}: let the strip fall free on the far side, or cut it from wide stock. The tool’s manual first.`;
    case 'short-on-sled':
      return `Under ${least} long, by ${at(small.by, tape)}: clamp it, hands no nearer to the teeth than that, or cut it from long stock. The tool’s manual first.`;
    case 'under-base':
      return `Narrower than the router’s base, by ${at(small.by, tape)}: lay a strip as thick beside it. The tool’s manual first.`;
    default:
      return assertNever(small);
  }
}

/** That more than half of a piece hangs over the table. */
export const hangsText = ({ over, by }: Hangs, tape: Tape): string =>
  `Hold it up ${over} the table: ${at(by, tape)} of it hangs over.`;
