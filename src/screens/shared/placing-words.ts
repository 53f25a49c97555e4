import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { WorkName } from '../../trade/carcass/part-name';
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
  good: 'good face',
};

const lies = { down: 'down', up: 'up', in: 'away from you', out: 'toward you' } as const;

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

function edgeLine({ onFence, stands, toYou }: Placing): string | undefined {
  if (onFence) return `${sideWords(onFence)} on fence`;
  if (stands) return `stood on the ${sideWords(stands)}`;
  return toYou && `${sideWords(toYou)} toward you`;
}

function endLine({ toStop, measured, stop }: Placing): string | undefined {
  if (toStop) return `${sideWords(toStop)} to stop`;
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

/**
 * How all pieces of a row lie: the face, and the edge of each where they differ.
 *
 * @example placingShort(sides) // 'inside down, L front, R back'
 */
export function placingShort(pieces: readonly Placed[]): string {
  const down = once(
    pieces.map(({ placing: { face } }) => face && `${shortFace(face.named)} ${lies[face.lies]}`),
  );
  const edges = once(pieces.map(({ placing }) => edgeLine(placing)));
  const each = pieces.flatMap(({ name, placing }) => {
    const side = placing.onFence ?? placing.stands ?? placing.toYou;
    return side ? [`${letterOf(name)} ${side.named}`] : [];
  });
  const how = edges.length > 1 ? once(each) : [...edges, ...handsLead(pieces)];
  return [down.join(' or '), ...how].filter(Boolean).join(', ');
}

/** Off one end or edge a left and a right are told by what leads. */
function handsLead(pieces: readonly Placed[]): readonly string[] {
  const leads = once(
    pieces.map(({ name, placing }) => placing.leads && `${letterOf(name)} ${placing.leads.named} leads`),
  );
  const hands = once(pieces.map(({ name }) => letterOf(name)));
  return hands.length > 1 && hands.every((hand) => hand === 'L' || hand === 'R') ? leads : [];
}

const shortFace = (named: FaceName): string => faces[named].replace(/ face$/, '');
