import type { Case, Stuff } from '../../../src/trade/carcass/case';
import { newCase } from '../../../src/trade/carcass/case';
import { partsOf, type Worked } from '../../../src/trade/carcass/parts';
import { l } from '../../length/write-figures';

export const sheet = (id: string, thickness: string, measured = true): Stuff => ({
  id,
  name: `Sheet ${id.toUpperCase()}`,
  thickness: l(thickness),
  measured,
});

/** The case of Example 1 of carcass, of two lots of sheet, so that one may measure thin. */
export const plainCase: Case = {
  ...newCase('c1'),
  name: 'Case',
  width: l('38 3/8'),
  height: l('64 1/4'),
  depth: l('17 1/2'),
  feet: l('4 1/8'),
  partitions: 1,
  stocks: { side: 'a', bottom: 'b', top: 'b', partition: 'b', shelf: 'b', back: 'k', tray: 't', frame: 'f' },
  hasBack: true,
  dado: l('9/32'),
  partitionDado: l('9/32'),
  topRabbet: l('11/32'),
  backDeep: l('11/32'),
  backWide: l('9/32'),
  ease: l('1/16'),
  inside: [
    { id: 'fixed1', kind: 'fixed', bay: 2, at: l('30') },
    {
      id: 'trays',
      kind: 'trays',
      bay: 1,
      first: l('2 1/8'),
      pitch: l('1 13/16'),
      endRoom: l('2 1/2'),
      width: l('13/32'),
      depth: l('3/16'),
      slack: l('3/64'),
    },
  ],
};

/** The same with its frame: Example 6 of carcass. */
export const framedCase: Case = {
  ...plainCase,
  hasFrame: true,
  overhang: l('3/16'),
  stile: l('1 11/16'),
  middle: l('1 3/8'),
  topRail: l('2'),
  bottomRail: l('1 5/8'),
};

export const sheets = (b = '23/32'): readonly Stuff[] => [
  sheet('a', '23/32'),
  sheet('b', b),
  sheet('k', '7/32'),
  sheet('t', '11/32'),
  sheet('f', '3/4'),
];

export function work(c: Case, stuff: readonly Stuff[] = sheets()): Worked {
  const worked = partsOf(c, { stuff, tape: '1/32' });
  if (!worked.ok)
    throw new Error(JSON.stringify(worked.error, (_, x) => (typeof x === 'bigint' ? `${x}` : x)));
  return worked.value;
}

export function part(worked: Worked, role: string) {
  const found = worked.parts.find((p) => p.id === `c1~${role}`);
  if (!found) throw new Error(`no part ${role}`);
  return found;
}
