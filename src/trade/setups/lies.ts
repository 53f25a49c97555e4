import type { Part } from '../carcass/part';
import type { CopyName } from '../carcass/part-name';
import type { FastenerRow } from '../fasteners/row';
import type { Board } from '../grooves/board';
import type { Face } from '../grooves/layout';
import type { Setting } from '../grooves/settings';
import { edgesOf } from '../joints/edges';
import { machineFor } from '../machines/groove-machines';
import { isOtherEndOn } from '../machines/reach';
import type { Bore } from '../shelves/bore';
import { innerOf } from './inner-face';
import type { Side } from './on';
import type { FaceName, Hand, Placing } from './placing';
import { farSide, opposite, type Toward, towardOf } from './turn';

/** The face that is cut into: what it is called, and toward what it looks in the case. */
type Looks = { readonly named: FaceName; readonly toward?: Toward | undefined };

/** Which piece of a part, and of a partition which face of it. */
type Which = { readonly copy: CopyName | undefined; readonly face?: Face };

const handed = (hand: CopyName | undefined): Toward | undefined =>
  hand === 'left' ? 'right' : hand === 'right' ? 'left' : undefined;

/** The face of a part that is grooved, rabbeted or lapped. */
function faceOf({ name, board }: Part, { copy, face = 'A' }: Which): Looks {
  switch (name.role) {
    case 'left':
    case 'right':
      return { named: 'inside', toward: handed(name.role) };
    case 'bottom':
      return { named: 'upper', toward: 'top' };
    case 'top':
      return { named: 'under', toward: 'bottom' };
    case 'partition':
      return face === 'A' ? { named: 'left', toward: 'left' } : { named: 'right', toward: 'right' };
    case 'side':
      return { named: 'inside', toward: handed(copy) };
    case 'front':
    case 'boxfront':
      return { named: 'inside', toward: 'back' };
    case 'boxback':
      return { named: 'inside', toward: 'front' };
    default:
      return board ? byHand(board, { copy, face }) : { named: 'grooved' };
  }
}

/**
 * A board laid out by hand. Of a pair the left one looks right, like the left side of a case; one whose reference end
 * is its left or right looks down instead, like a top. What is alike has no hand.
 */
function byHand({ made, end }: Board, { copy, face }: Required<Which>): Looks {
  const flat = end === 'left' || end === 'right';
  const turned = (toward: Toward | undefined): Toward | undefined =>
    flat && toward ? (toward === 'right' ? 'bottom' : 'top') : toward;
  if (made === 'pair') return { named: 'inside', toward: turned(handed(copy)) };
  if (made === 'partition') return { named: face, toward: turned(face === 'A' ? 'left' : 'right') };
  return { named: 'grooved' };
}

/**
 * The face a row is bored in: that which is cut. Of a part whose faces have no names there it is the one that looks up
 * or into the case, and is called grooved once something else is cut in it.
 */
export function boredIn(part: Part, which: Which): Looks {
  const looks = faceOf(part, which);
  if (looks.toward || part.board?.made === 'pair' || part.board?.made === 'partition') return looks;
  const inner = innerOf(part);
  const { board, rabbets, along = [] } = part;
  const cut = rabbets.length > 0 || along.length > 0 || (board && board.runs.length + board.wides.length > 0);
  return cut ? { ...inner, named: 'grooved' } : inner;
}

const edge = (named: string): Side => ({ at: 'edge', named });
const end = (named: string): Side => ({ at: 'end', named });

/** What lies near and far on a machine; both left out where the piece is not told apart. */
function nearAndFar(
  looks: Looks,
  on: { readonly lies: 'up' | 'down'; readonly to: Side; readonly at: Hand },
): { readonly near?: Side; readonly far?: Side } {
  const against = towardOf(on.to.named);
  if (!looks.toward || !against) return {};
  const away = farSide({ face: looks.toward, lies: on.lies, end: against, endAt: on.at });
  if (!away) return {};
  const at = on.to.at === 'end' ? 'edge' : 'end';
  return { near: { at, named: opposite(away) }, far: { at, named: away } };
}

/**
 * A board at the machine that cuts its grooves. On a sled the stack is below and the fence at your side; a sliding
 * saw comes from above and has its fence at the far side; off a rip fence, right of the stack, its end runs along the
 * fence; under a guide the groove is up and cut away from you, the guide at your left, so that the bit draws into it.
 */
export function grooved(part: Part, setting: Setting, copy: CopyName | undefined): Placing {
  const { board } = part;
  if (!board) return {};
  const looks = faceOf(part, { copy, face: setting.groove.face });
  const { stopped } = setting.groove;
  const short = stopped ? { stopped } : {};
  const machine = machineFor(board.machine);
  const reference = towardOf(board.end);
  const other = isOtherEndOn(machine, board);
  const to = end(other ? (reference ? opposite(reference) : 'other') : board.end);
  const lie = (lies: 'up' | 'down', at: Hand) => nearAndFar(looks, { lies, to, at });
  const face = (lies: 'up' | 'down') => ({ face: { named: looks.named, lies }, ...short });
  if (machine.holds === 'guide') {
    const at = board.guide === 'reference' ? 'left' : 'right';
    const { near } = lie('up', at);
    return { ...face('up'), measured: to, stop: at, ...(near ? { toYou: near, leads: near } : {}) };
  }
  if (machine.holds === 'fence') {
    // of a router table the whole is a quarter round: the fence at the far side, what leads at the left
    const { far } = lie('down', 'right');
    const leads = far ? { leads: far } : {};
    if (machine.farFence) return { ...face('down'), onFence: to, fence: 'far', ...leads };
    return { ...face('down'), onFence: to, stop: 'right', ...(far ? { leads: far } : {}) };
  }
  const off = { toStop: to, stop: board.stopSide } as const;
  if (machine.above) {
    const { far } = lie('up', board.stopSide);
    return { ...face('up'), ...off, fence: 'far', ...(far ? { onFence: far } : {}) };
  }
  const sled = { ...face('down'), ...off, fence: 'near' } as const;
  const { near, far } = lie('down', board.stopSide);
  if (near && far) return { ...sled, onFence: near, leads: far };
  // a board alike its others is told by no edge: the same one each time
  return stopped ? sled : { ...sled, onFence: edge('true') };
}

type OfRow = Pick<Bore, 'by' | 'face' | 'edge'> & Which;

/**
 * Bored from above, the face up: at a drill press the edge it stands off lies against the fence, which stands behind
 * the bit; under a template it is toward you. Which hand the reference end comes to follows: the two of a pair swap.
 */
export function bored(part: Part, { by, face, copy, edge: off = 'front' }: OfRow): Placing {
  const looks = boredIn(part, { copy, face });
  const against = towardOf(part.end);
  const toward = towardOf(off) ?? 'front';
  const away: Toward = by === 'press' ? toward : opposite(toward);
  const hand = (['left', 'right'] as const).find(
    (endAt) =>
      looks.toward && against && farSide({ face: looks.toward, lies: 'up', end: against, endAt }) === away,
  );
  return {
    face: { named: looks.named, lies: 'up' },
    ...(by === 'press' ? { onFence: edge(off), fence: 'far' } : { toYou: edge(off) }),
    ...(hand ? { marked: end(part.end), stop: hand } : {}),
  };
}

/**
 * For what holds a butted joint: an end with its reference face toward you, up for a joiner's fence and where a guide
 * is clamped to it; a face up, its front edge toward you.
 */
export const fastened = (part: Part, { in: where, biscuit, slant }: FastenerRow): Placing =>
  where.at === 'ends'
    ? { face: { named: where.off, lies: biscuit || slant ? 'up' : 'out' } }
    : {
        face: { named: faceOf(part, { copy: undefined, ...where }).named, lies: 'up' },
        toYou: edge('front'),
      };

/** Along a fence right of the cutter, the cut face down: rabbets, and grooves along an edge. */
export const alongFence = (part: Part, along: Side, which: Which): Placing =>
  offFence(faceOf(part, which), along);

/** The other face of a side of a drawer. */
export const outsideAlong = (along: Side, copy: CopyName | undefined): Placing => {
  const inside = handed(copy);
  return offFence({ named: 'outside', toward: inside && opposite(inside) }, along);
};

/** The same for a face that is not the one a part is grooved in. */
export function offFence(looks: Looks, along: Side): Placing {
  const { far } = nearAndFar(looks, { lies: 'down', to: along, at: 'right' });
  return {
    face: { named: looks.named, lies: 'down' },
    onFence: along,
    stop: 'right',
    ...(far ? { leads: far } : {}),
  };
}

const offStop = (part: Part): Placing => ({ toStop: end(part.end), stop: 'left', fence: 'near' });

/** Notched in the back edge, or what is called that of a part that has none, clamped as one and stood on it. */
export const notched = (part: Part): Placing => ({ stands: edge(edgesOf(part)[0]), ...offStop(part) });

/** Under a cutter that comes from above: that edge up, the fence at the far side. */
export const notchedFromAbove = (part: Part): Placing => ({
  stands: edge(edgesOf(part)[1]),
  ...offStop(part),
  fence: 'far',
});

/** A blade that cuts on its way up tears the face above it: the one that is seen lies down. */
export const cornered: Placing = { face: { named: 'outside', lies: 'down' } };

/**
 * The face laps are cut in. A base frame lies flat and flush on top: its rails from above, its cross members, which
 * lie over them, from below. A face frame likewise in front and from the back.
 */
export function lapFace({ name, lapsFromBack }: Part): 'upper' | 'under' | 'show' | 'back' {
  if (name.role === 'baserail') return 'upper';
  if (name.role === 'basecross') return 'under';
  return lapsFromBack ? 'back' : 'show';
}

/** Half-lapped, cut from below: the face its lap is in lies down, which of a stile is told by the other. */
export function lapped(part: Part): Placing {
  const cut = lapFace(part);
  const face =
    cut === 'back' ? ({ named: 'show', lies: 'up' } as const) : ({ named: cut, lies: 'down' } as const);
  return { face, onFence: edge('true'), ...offStop(part) };
}

/** The same under a cutter that comes from above: the other way up, the fence at the far side. */
export function lappedFromAbove(part: Part): Placing {
  const { face, ...lies } = lapped(part);
  return {
    ...lies,
    ...(face ? { face: { ...face, lies: face.lies === 'up' ? 'down' : 'up' } } : {}),
    fence: 'far',
  };
}

/** Along the fence of a router table, which stands at the far side: a quarter round, what leads at the left. */
export function alongFarFence({ stop: _, ...lies }: Placing): Placing {
  return { ...lies, fence: 'far' };
}

/**
 * Mitred with the outside up, so that the long point is seen. What has one mitre has its other end on the stop: a
 * strip its back end, and the left and the right one lie on opposite edges.
 */
export function mitred(part: Part): Placing {
  const face = { named: 'outside', lies: 'up' } as const;
  const { role } = part.name;
  const toward = role === 'edgeleft' ? 'left' : role === 'edgeright' ? 'right' : undefined;
  if (!toward) return { face, ...otherEndToStop(part) };
  const to = end('back');
  const { near, far } = nearAndFar({ named: 'outside', toward }, { lies: 'up', to, at: 'left' });
  return {
    face,
    toStop: to,
    stop: 'left',
    fence: 'near',
    ...(near && far ? { onFence: near, leads: far } : {}),
  };
}

/** Of a part mitred at one end the other is on the stop; where both are, each is in turn. */
function otherEndToStop({ mitres = [] }: Part): Placing {
  const [named, more] = mitres;
  const toward = named && !more ? towardOf(named) : undefined;
  return toward ? { toStop: end(opposite(toward)), stop: 'left', fence: 'near' } : {};
}

/**
 * Dovetails. In a template both pieces stand inside out: the side upright with its inside toward you, the front flat
 * with its inside up, bottom edges to the stops (common practice, no source; the template's own sheet first). Laid out
 * by hand, tails are sawn to lines on the outside.
 */
export function dovetailed({ endCut }: Part): Placing {
  if (!endCut) return {};
  const template = endCut.on.at === 'tails' && endCut.on.by === 'template';
  if (endCut.what === 'pins') {
    const face = { named: 'inside', lies: 'up' } as const;
    return template ? { face, toStop: edge('bottom') } : { face };
  }
  return template
    ? { face: { named: 'inside', lies: 'out' }, toStop: edge('bottom') }
    : { face: { named: 'outside', lies: 'out' } };
}

/** On a sled with a pin a piece stands on its end, its bottom edge toward the pin, and is stepped from slot to slot. */
export const fingered = ({ name }: Part): Placing => ({
  stands: end(name.role === 'side' ? 'front' : 'both'),
  toPin: edge('bottom'),
});
