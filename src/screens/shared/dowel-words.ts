import { assertNever } from '../../length/result';
import type { DowelError, DowelWarning } from '../../trade/fasteners/dowels';
import { exactly as w } from './exact-words';
import { rowFails } from './row-fails';

/** What is worth a look in dowels that can be set. */
export function dowelWarning(warning: DowelWarning): string {
  switch (warning.code) {
    case 'turns':
      return 'One alone lets the part turn: two, or a longer joint.';
    case 'near-end':
      return `The first is ${w(warning.end)} from the end, under ${w(warning.least)}: the end may split.`;
    case 'thin-wall':
      return `Only ${w(warning.wall)} of wood stays beside the dowel, under ${w(warning.least)}.`;
    default:
      return assertNever(warning);
  }
}

/** Why no dowel can be set, by how much. */
export function dowelFails(error: DowelError): string {
  switch (error.code) {
    case 'no-wood':
      return 'A thickness is 0 or less: measure it again.';
    case 'no-dowel':
      return `No dowel on the shelf fits: one from ${w(error.least)} to ${w(error.most)} thick does.`;
    case 'mate-thin':
      return `What it ends against is ${w(error.by)} too thin for a hole in its face.`;
    case 'off-the-part':
      return `They come out of the part by ${w(error.by)}: nearer its middle.`;
    default:
      return rowFails(error);
  }
}
