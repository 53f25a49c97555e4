import { assertNever } from '../../length/result';
import type { Layout } from '../../trade/grooves/lay-out';
import type { Warning } from '../../trade/grooves/layout';
import { exactly as w } from './exact-words';
import { callGroove } from './groove-name';

/** What is worth a look. Limits are common practice. */
export function warningText(warning: Warning, layout: Layout): string {
  const call = (id: string) => callGroove(layout, id);
  switch (warning.code) {
    case 'end-land':
      return `Only ${w(warning.land)} of wood ${warning.end === 'reference' ? 'before' : 'after'} ${call(warning.at)}: short grain breaks under ${w(warning.least)}.`;
    case 'land':
      return `Only ${w(warning.land)} of wood between ${call(warning.a)} and ${call(warning.b)}: under ${w(warning.least)} it breaks.`;
    case 'web': {
      const remedy = warning.b
        ? 'Stagger them, cut shallower, or take thicker stuff.'
        : 'Cut shallower, or take thicker stuff.';
      return `Only ${w(warning.web)} left between ${call(warning.a)} and ${warning.b ? call(warning.b) : 'the other face'}: leave ${w(warning.least)}. ${remedy}`;
    }
    case 'deep':
      return `${w(warning.depth)} deep is more than half of ${w(warning.thickness)}.`;
    default:
      return assertNever(warning);
  }
}
