import { describe, expect, test } from 'vitest';
import { ownMachines, ownRows } from '../../src/job/own-machines';
import { readLists, shelfChanges, usualLists, writeLists } from '../../src/job/shop-lists';
import { shopTools } from '../../src/job/shop-tools';
import { orderOf } from '../../src/job/tool-order';
import { ownFields } from '../../src/trade/machines/own-machine';
import type { OwnMachine, Tool } from '../../src/trade/machines/shop';
import { l, w } from '../length/write-figures';

const old: OwnMachine = { id: 'own1', name: 'Old saw', like: 'fence', figures: { capacity: l('30 1/2') } };
const rail: OwnMachine = { id: 'own2', name: 'Rail', like: 'circular', figures: { kerf: l('3/32') } };
const both = { ...usualLists, own: [old, rail] };

describe('machines the shop added', () => {
  test('are kept thing by thing in the drawers, and read as they were kept, in the order they were added', () => {
    const kept = shelfChanges(usualLists, both);
    expect(kept).toEqual({
      'shelf/machine/own1/name': 'Old saw',
      'shelf/machine/own1/like': 'fence',
      'shelf/machine/own1/capacity': '61/2',
      'shelf/machine/own2/name': 'Rail',
      'shelf/machine/own2/like': 'circular',
      'shelf/machine/own2/kerf': '3/32',
    });
    expect(readLists(undefined, kept).own).toEqual(both.own);
    expect(ownMachines(ownRows(Object.fromEntries(Object.entries(kept).reverse())))).toEqual(both.own);
    expect(readLists(undefined, {}).own).toBeUndefined();
  });

  test('of every kind there is are read as they were kept, and have their place in an order said', () => {
    const own = (Object.keys(ownFields) as Tool[]).map(
      (like, k): OwnMachine => ({ id: `own${k}`, name: like, like, figures: {} }),
    );
    const kept = shelfChanges(usualLists, { ...usualLists, own });
    expect(readLists(undefined, kept).own).toEqual(own);
    expect(orderOf('press sled own7')).toEqual(['press', 'sled', 'own7']);
  });

  test('a figure of one is no word on the other, nor on its name: two pages that measure one each have measured two', () => {
    const kept = shelfChanges(usualLists, both);
    const measured = { ...old, figures: { ...old.figures, tableHeight: l('3') } };
    expect(shelfChanges(both, { ...both, own: [measured, rail] })).toEqual({
      'shelf/machine/own1/tableHeight': '3',
    });
    const renamed = shelfChanges(both, { ...both, own: [{ ...old, name: 'Saw in the loft' }, rail] });
    const after = readLists(undefined, { ...kept, 'shelf/machine/own1/tableHeight': '3', ...renamed }).own;
    expect(after).toEqual([{ ...measured, name: 'Saw in the loft' }, rail]);
  });

  test('one taken away is gone, also where another page measures it afterwards', () => {
    const kept = shelfChanges(usualLists, both);
    const away = shelfChanges(both, { ...both, own: [rail] });
    const all = { ...kept, ...away, 'shelf/machine/own1/tableHeight': '3' };
    expect(readLists(undefined, all).own).toEqual([rail]);
    expect(shopTools(all).own).toEqual([rail]);
  });

  test('go with a copy of everything, and are told thing by thing over what is here', () => {
    const copy = writeLists(both);
    expect(readLists(JSON.parse(JSON.stringify(copy))).own).toEqual(both.own);
    expect(ownMachines(ownRows({ lists: copy }))).toEqual(both.own);
    const here = { ...usualLists, own: [rail] };
    expect(Object.keys(shelfChanges(here, readLists(copy)))).toEqual([
      'shelf/machine/own1/name',
      'shelf/machine/own1/like',
      'shelf/machine/own1/capacity',
    ]);
  });

  test('what cannot be read is left out: a name that is none of ours, a tool there is not, a figure that is no length', () => {
    expect(
      ownMachines({
        'shelf/machine/fence/like': 'fence',
        'shelf/machine/own3/like': 'chisel',
        'shelf/machine/own4/like': 'sled',
        'shelf/machine/own4/stopReach': 'far',
      }),
    ).toEqual([{ id: 'own4', name: '', like: 'sled', figures: {} }]);
  });

  test('the shop is the very same while nothing of them changes', () => {
    const kept = shelfChanges(usualLists, both);
    const before = shopTools({ ...kept, here: '#/cuts' });
    expect(shopTools({ ...kept, here: '#/job' })).toBe(before);
    expect(shopTools({ ...kept, 'shelf/tools': 'own2 fence' }).order).toEqual(['own2', 'fence']);
  });
});

describe('the screws the plan is given', () => {
  test('are those of the shop’s list: the usual ones, those once kept whole, and over them each by itself', () => {
    const screws = (rows: Parameters<typeof shopTools>[0]) => {
      const found = shopTools(rows).screws ?? [];
      const listed = readLists(rows.lists, rows).screws;
      expect(found).toEqual(listed);
      return found.map(w);
    };
    // quarters: 3/4 to 1 1/2, then 2, 2 1/2 and 3. Common practice, no source
    expect(screws({})).toEqual(['3/4', '1', '1 1/4', '1 1/2', '2', '2 1/2', '3']);
    expect(screws({ lists: { screws: ['1', '5/4'] } })).toEqual(['1', '1 1/4']);
    expect(
      screws({
        lists: { screws: ['1', '5/4'] },
        'shelf/screw/1': 0,
        'shelf/screw/5~8': 1,
        'shelf/screw/x': 1,
      }),
    ).toEqual(['5/8', '1 1/4']);
    expect(screws({ lists: { screws: [] } })).toEqual([]);
  });
});
