import { fromStored } from '../../length/stored';
import type { Gone } from '../../plan/buying';
import type { Group, Unit } from '../../trade/buying/line';
import { exactly as w } from '../shared/exact-words';
import { decimal, isOne, sizedScrew, unitWords } from './words';

const ofGroup: Record<Group, Unit> = {
  sheets: 'sheet',
  sticks: 'stick',
  solid: 'board-foot',
  fillers: 'strip',
  edging: 'foot',
  pins: 'pin',
  clips: 'clip',
  strips: 'strip',
  slides: 'pair',
  screws: 'screw',
  dowels: 'dowel',
  biscuits: 'biscuit',
};

const isGroup = (word: string): word is Group => word in ofGroup;

/** What was got and is no line of the list any more. */
export function goneText(
  { op, ticked, isPart }: Gone,
  nameOf: (stock: string) => string | undefined,
): string {
  const [, group = '', own = ''] = op.split('/');
  const [one, many] = isGroup(group) ? unitWords[ofGroup[group]] : ['thing', 'things'];
  const name = isGroup(group) ? ownName(group, own, nameOf) : undefined;
  const now = isPart ? 'a part now, counted with what it is of' : 'nothing in the job asks for it now';
  return `${decimal(ticked, 1)} ${isOne(ticked) ? one : many}${name ? `, ${name}` : ''}: ${now}.`;
}

function ownName(
  group: Group,
  own: string,
  nameOf: (stock: string) => string | undefined,
): string | undefined {
  if (group === 'fillers') return 'filler';
  if (group === 'edging') return 'band for edges';
  if (group === 'biscuits') return `#${own}`;
  if (group === 'pins' || group === 'clips') return 'for loose shelves';
  if (group === 'strips') return 'to hold shelves';
  if (group === 'dowels') {
    const sizes = own.split('x').map((size) => fromStored(size.replace('~', '/')));
    return sizes.map((size) => (size.ok ? w(size.value) : '')).join(' × ');
  }
  const [stock = ''] = own.split('~');
  if (group !== 'slides' && group !== 'screws') return nameOf(stock);
  const [size = '', gauge] = own.split('~no');
  const long = fromStored(size.replace('~', '/'));
  return long.ok ? `${group} ${sizedScrew(gauge, long.value)}` : group;
}
