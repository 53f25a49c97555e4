import { type Tape, tapes } from '../length/tape';
import type { Json } from './entry';

/** How this phone likes things. Kept on the phone alone, in no job file. */
export type Settings = {
  readonly theme: 'phone' | 'satin' | 'blued';
  readonly hand: 'right' | 'left';
  readonly text: 'phone' | 'large';
  /** What calipers that type send; the unit of the tape when not said. */
  readonly calipers: 'tape' | 'in' | 'mm';
  /** When a figure is read aloud: on a tap, or at every step too. */
  readonly aloud: 'tap' | 'each';
  /** Marks of Figure, and of a new job. */
  readonly tape: Tape;
  /** The job in hand. */
  readonly job?: string;
  /** Where the user was, as a hash route. */
  readonly here?: string;
  /** The last setting stood at, as a hash route. */
  readonly saw?: string;
  /** Lists of the shop: stack pieces, shims, screws. */
  readonly lists?: Json;
  /**
   * What lies in the shop's drawers, thing by thing, over the lists as they were once kept whole. By key, see
   * `shelfKey`.
   */
  readonly shelf: Readonly<Record<string, Json>>;
  /** How large a point of this screen is: see `screens/rule/kept.ts`. */
  readonly rule?: Json;
  /** Shop figures that came with the sample and nobody has called their own yet. */
  readonly figuresFrom?: 'sample' | 'own';
  /** By job, what the other phone has of it: see `handover/known.ts`. */
  readonly handed?: Json;
};

/** The thing of the shop's drawers a key is about. @example shelfKey('shelf/shim/1~64') // 'shim/1~64' */
export const shelfKey = (key: string): string | undefined =>
  key.startsWith('shelf/') ? key.slice('shelf/'.length) : undefined;

const oneOf = <T extends string>(words: readonly T[], json: Json | undefined, otherwise: T): T =>
  words.find((word) => word === json) ?? otherwise;

/** Settings as kept, checked: anything not readable falls back. */
export function readSettings(kept: Readonly<Record<string, Json>>): Settings {
  const route = (json: Json | undefined) =>
    typeof json === 'string' && json.startsWith('#/') ? json : undefined;
  const here = route(kept.here);
  const saw = route(kept.saw);
  return {
    theme: oneOf(['phone', 'satin', 'blued'], kept.theme, 'phone'),
    hand: oneOf(['right', 'left'], kept.hand, 'right'),
    text: oneOf(['phone', 'large'], kept.text, 'phone'),
    calipers: oneOf(['tape', 'in', 'mm'], kept.calipers, 'tape'),
    aloud: oneOf(['tap', 'each'], kept.aloud, 'tap'),
    tape: oneOf(tapes, kept.tape, '1/32'),
    shelf: Object.fromEntries(Object.entries(kept).filter(([key]) => shelfKey(key) !== undefined)),
    ...(typeof kept.job === 'string' ? { job: kept.job } : {}),
    ...(here ? { here } : {}),
    ...(saw ? { saw } : {}),
    ...(kept.lists === undefined ? {} : { lists: kept.lists }),
    ...(kept.rule === undefined ? {} : { rule: kept.rule }),
    ...(kept.figuresFrom === 'sample' ? { figuresFrom: 'sample' } : {}),
    ...(kept.handed === undefined ? {} : { handed: kept.handed }),
  };
}
