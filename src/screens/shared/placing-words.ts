import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { Part } from '../../trade/carcass/part';
import type { WorkName } from '../../trade/carcass/part-name';
import type { Face } from '../../trade/grooves/layout';
import { boredIn } from '../../trade/setups/lies';
import type { Side } from '../../trade/setups/on';
import type { FaceName, Placing } from '../../trade/setups/placing';
import { capital } from './capital';
import { partWord } from './part-words';

const faces: Readonly<Record<FaceName, string>> = {
  inside: 'inside face',
  outside: 'outside face',
  upper: 'upper face',
  under: 'under face',
  left: 'face A (left)',
  right: 'face B (right)',
  A: 'face A',
  B: 'face B',
  grooved: 'grooved face',
  show: 'show face',
  cut: 'face to be cut',
  good: 'good face',
  marked: 'face with the marks',
};

/** A face of a part. @example faceWord('under') // 'under face' */
export const faceWord = (named: FaceName): string => faces[named];

const lies = { down: 'down', up: 'up', in: 'away from you', out: 'toward you' } as const;

/** A face of a part. @example faceWords('inside') // 'inside face' */
export const faceWords = (named: FaceName): string => faces[named];

/** The face of a part a row of holes is bored in. @example boredFace(shelf) // 'the upper face' */
export function boredFace(part: Part, face?: Face): string {
  const { named } = boredIn(part, { copy: undefined, ...(face ? { face } : {}) });
  return / face$|^face with/.test(faces[named]) ? `the ${faces[named]}` : faces[named];
}

/** An end or an edge of a part. @example sideWords({ at: 'edge', named: 'back' }) // 'back edge' */
export const sideWords = ({ at, named }: Side): string => `${named} ${at}`;

/** How a piece lies, a line each; what does not apply is left out. */
type PlacingWords = {
  /** First in its box: what tells a left from a right. */
  readonly edge?: string;
  readonly leads?: string;
  readonly face?: string;
  readonly end?: string;
  /** A cut that stops short of the front edge. */
  readonly stopped?: string;
};

/**
 * The lines of the box of a piece.
 *
 * @example placingWords(placing, '1/32').edge // 'Front edge on fence'
 */
export function placingWords(placing: Placing, tape: Tape): PlacingWords {
  const edge = edgeLine(placing);
  const face = placing.face && `${faces[placing.face.named]} ${lies[placing.face.lies]}`;
  const end = endLine(placing);
  const stopped = stoppedLine(placing, tape);
  const leads = placing.leads && !placing.toYou ? `${sideWords(placing.leads)} leads` : undefined;
  return {
    ...(edge ? { edge: capital(edge) } : {}),
    ...(leads ? { leads } : {}),
    ...(face ? { face } : {}),
    ...(end ? { end } : {}),
    ...(stopped ? { stopped } : {}),
  };
}

function edgeLine({ onFence, stands, toYou, measured, stop }: Placing): string | undefined {
  if (onFence) return `${sideWords(onFence)} on fence`;
  if (stands?.named === 'both') return 'stood on each end in turn';
  if (stands) return `stood on the ${sideWords(stands)}`;
  if (measured?.at === 'edge') return `${sideWords(measured)} on your ${stop}`;
  return toYou && `${sideWords(toYou)} toward you`;
}

function endLine({ toStop, toPin, measured, marked, stop }: Placing): string | undefined {
  if (marked) return `${sideWords(marked)} on your ${stop}, marked from it`;
  if (toPin) return `${sideWords(toPin)} toward the pin`;
  if (toStop) return `${sideWords(toStop)} to stop`;
  if (measured?.at === 'edge') return 'guide measured from it';
  return measured && `${sideWords(measured)} on your ${stop}, guide measured from it`;
}

function stoppedLine({ stopped, leads }: Placing, tape: Tape): string | undefined {
  if (!stopped) return undefined;
  const short = writeMark(markAt(stopped, tape), tape);
  if (!leads) return `stopped ${short} short of the front edge`;
  return leads.named === 'front'
    ? `begins ${short} behind the front edge`
    : `ends ${short} before the front edge`;
}

/** How a piece lies in one line, for plain text and print. @example placingLine({}, '1/32') // '' */
export function placingLine(placing: Placing, tape: Tape): string {
  const { edge, leads, face, end, stopped } = placingWords(placing, tape);
  const first = edge && `${edge.charAt(0).toLowerCase()}${edge.slice(1)}`;
  return [first, leads, face, end, stopped].filter(Boolean).join(', ');
}

/** A piece with how it lies. */
type Placed = { readonly name: WorkName; readonly placing: Placing };

/** Left and right by their letter, other pieces by name. */
function letterOf({ of, copy }: WorkName): string {
  const hand = of.role === 'left' || of.role === 'right' ? of.role : copy;
  return hand === 'left' ? 'L' : hand === 'right' ? 'R' : partWord(of, copy);
}

const once = (words: readonly (string | undefined)[]): readonly string[] => [
  ...new Set(words.filter((word) => word !== undefined)),
];

/** A side of each piece, by its letter: `L front`. */
const each = (pieces: readonly Placed[], sideOf: (placing: Placing) => Side | undefined, does = '') =>
  once(
    pieces.map(({ name, placing }) => {
      const side = sideOf(placing);
      return side && `${letterOf(name)} ${side.named}${does}`;
    }),
  );

/**
 * How all pieces of a row lie: the face, the edge of each where they differ, what leads where no edge tells it, the
 * end.
 *
 * @example placingShort(sides) // 'inside down, L front, R back, bottom end to stop'
 */
export function placingShort(pieces: readonly Placed[]): string {
  const lying = pieces.map(({ placing }) => placing);
  const down = once(lying.map(({ face }) => face && `${shortFace(face.named)} ${lies[face.lies]}`));
  const edges = once(lying.map(edgeLine));
  const told = edges.length > 1 ? each(pieces, (p) => p.onFence ?? p.stands ?? p.toYou) : edges;
  const ends = once(lying.map(shortEnd));
  return [down.join(' or '), ...told, ...leadsShort(pieces, edges), ends.join(' or ')]
    .filter(Boolean)
    .join(', ');
}

/** What leads: of each piece where they differ, of all where an end is on the fence. With an edge on it, that tells. */
function leadsShort(pieces: readonly Placed[], edges: readonly string[]): readonly string[] {
  const leads = once(pieces.map(({ placing: { leads: first } }) => first && `${sideWords(first)} leads`));
  if (edges.length > 1) return [];
  if (leads.length > 1) return each(pieces, (p) => p.leads, ' leads');
  return pieces.some(({ placing }) => placing.onFence?.at === 'end') ? leads : [];
}

function shortEnd({ toStop, toPin, measured, marked }: Placing): string | undefined {
  if (marked) return `marked from ${sideWords(marked)}`;
  if (toPin) return `${sideWords(toPin)} toward the pin`;
  return toStop ? `${sideWords(toStop)} to stop` : measured && `guide from ${sideWords(measured)}`;
}

const shortFace = (named: FaceName): string => faces[named].replace(/ face$/, '');
