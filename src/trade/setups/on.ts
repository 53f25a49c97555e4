import type { Length } from '../../length/length';
import { writeLength } from '../../length/write';
import type { ReferenceFace } from '../fasteners/row';
import type { Board } from '../grooves/board';

/** An end or an edge of a part, by its own name: `bottom`, `left`. */
export type Side = { readonly at: 'end' | 'edge'; readonly named: string };

/** How dovetails are laid out. */
export type TailsBy = 'template' | 'laid-out';

/** What is on the stop, fence or guide. What is said of it stands in the screens. */
export type On =
  | { readonly at: 'nothing' | 'true-edge' | 'strip' | 'squared-end' | 'other-end' | 'end-of-front' }
  | (Side & { readonly guide?: Board['guide'] })
  /** A line off an edge, and one so high up from the end beside it. Inches. */
  | { readonly at: 'corner'; readonly named: string; readonly end: string; readonly high: Length }
  /** A mitred end, measured to its long points. */
  | { readonly at: 'points'; readonly named: string }
  /** Tails so long, inches. */
  | { readonly at: 'tails'; readonly by: TailsBy; readonly long: Length }
  /** Fingers, the first thing at the bottom edge a finger or a slot. */
  | { readonly at: 'fingers'; readonly begins: 'finger' | 'slot' }
  /** A face of a part: what is bored in an end stands off it. */
  | { readonly at: 'face'; readonly named: ReferenceFace }
  /** Holes for dowels: in an end, off the outside face; in a face, off the end beside them. */
  | { readonly at: 'dowels'; readonly in: 'face' | 'end' }
  /** A thing of the job's own: work by hand, a step of the bench, a stick of a bank. */
  | { readonly at: 'own'; readonly id: string }
  /** The story stick of a bank; a part whose grooves cannot be set yet. */
  | { readonly at: 'story-stick' | 'not-set-out'; readonly of: string };

const bare = {
  nothing: '',
  'true-edge': 'true edge',
  strip: 'strip',
  'squared-end': 'squared end',
  'other-end': 'other end',
  'end-of-front': 'end of the front',
} as const;

const tailsBy: Record<TailsBy, string> = { template: 'by template', 'laid-out': 'laid out' };

/**
 * How it is spelled in the key of a setup. Notes are kept under these keys: no spelling is ever changed.
 *
 * @example spelled({ at: 'end', named: 'bottom' }) // 'bottom end'
 */
export function spelled(on: On): string {
  switch (on.at) {
    case 'end':
    case 'edge':
      return `${on.named} ${on.at}${on.guide ? `, ${on.guide}` : ''}`;
    case 'corner':
      return `${on.named} corner ${writeLength(on.high)} high`;
    case 'points':
      return on.named;
    case 'tails':
      return `${tailsBy[on.by]}, tails ${writeLength(on.long)} long`;
    case 'fingers':
      return `${on.begins} first`;
    case 'face':
      return `${on.named} face`;
    case 'dowels':
      return `dowels in the ${on.in}`;
    case 'own':
      return on.id;
    case 'story-stick':
      return `${on.of} story stick`;
    case 'not-set-out':
      return `${on.of} not set out`;
    default:
      return bare[on.at];
  }
}
