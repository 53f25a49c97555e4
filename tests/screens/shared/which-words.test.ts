import { describe, expect, test } from 'vitest';
import { whatWords, whichWords } from '../../../src/screens/shared/cut-words';
import { takesWords } from '../../../src/screens/shared/which-words';
import { type Operation, opId, type What } from '../../../src/trade/setups/operation';
import { setupOf } from '../../../src/trade/setups/setup';
import type { Which } from '../../../src/trade/setups/which';
import { l } from '../../length/write-figures';

const operation = (what: What, which?: Which): Operation => ({
  id: opId('side', what, '1'),
  part: 'side',
  copy: '1',
  name: { of: { role: 'left' } },
  what,
  ...(which ? { which } : {}),
  setup: setupOf({ machine: 'hand', on: { at: 'nothing' } }),
  figure: l('1'),
  after: [],
});

describe('takesWords', () => {
  test('numbers a cleat only where there are several', () => {
    expect(takesWords({ part: 'cleat' })).toBe('for the cleat');
    expect(takesWords({ part: 'cleat', no: 2 })).toBe('for cleat 2');
    expect(takesWords({ part: 'back' })).toBe('for the back');
  });
});

describe('whatWords', () => {
  const said = (what: What, which?: Which) => whatWords(operation(what, which), '1/32');

  test('of a bookcase no step minds drawers, slides or trays', () => {
    const bare = (what: What, trays = false) =>
      whichWords(operation(what, { is: 'no-drawers', trays }), '1/32');
    expect((['carry-in', 'finish', 'load', 'label'] as const).map((what) => bare(what))).toEqual([
      ...['of two units the lower first', 'dust off, joints masked', 'the heavy things low', 'shelves'],
    ]);
    expect([bare('carry-in', true), bare('label', true)]).toEqual([
      ...['trays out; of two units the lower first', 'trays and shelves'],
    ]);
    expect(bare('level')).toBe(whichWords(operation('level'), '1/32'));
    expect(whichWords(operation('label'), '1/32')).toBe('drawers and trays');
  });

  test('of a rip nothing more is said', () => {
    expect(said('rip')).toBe('rip');
    expect(whichWords(operation('rip'), '1/32')).toBe('');
  });

  test('a groove is called by its number or by what stands in it, its wall and its face', () => {
    expect(said('groove', { is: 'groove', seat: { in: 'run', no: '7' } })).toBe('groove no. 7');
    const own = (said: string) => ({ is: 'groove', seat: { in: 'said', said } }) as const;
    expect(said('groove', own('a rail'))).toBe('dado for a rail');
    expect(said('groove', own(''))).toBe('dado added by hand');
    const shelf = { is: 'groove', seat: { in: 'shelf' }, wall: 'near', face: 'B' } as const;
    expect(said('groove', shelf)).toBe('groove for the shelf, near wall, face B');
    expect(whatWords({ ...operation('groove', shelf), fits: 'ply' }, '1/32')).toBe(
      'dado for the shelf, near wall, face B',
    );
  });

  test('of two shelves the dado says which', () => {
    const second = operation('groove', { is: 'groove', seat: { in: 'shelf', no: '2' } });
    expect(whatWords({ ...second, fits: 'ply' }, '1/32')).toBe('dado for shelf 2');
  });

  test('a stopped groove for the back is squared; one that runs out at the end it is measured from has one end', () => {
    const back = { is: 'takes', takes: { part: 'back' } } as const;
    const across = { from: l('31/32'), to: l('38 13/32'), end: 'left' };
    expect(said('along', { ...back, stopped: across })).toContain(
      'for the back, stopped: 31/32 to 38 13/32 from the left end, its end squared with a chisel',
    );
    expect(said('along', { ...back, stopped: { from: l('0'), to: l('63 25/32'), end: 'bottom' } })).toContain(
      'for the back, stopped 63 25/32 from the bottom end, its end squared',
    );
  });

  test('a stopped rabbet says from where to where', () => {
    const stopped = { from: l('3 1/2'), to: l('9'), end: 'bottom' };
    expect(said('rabbet', { is: 'takes', takes: { part: 'top' } })).toBe('rabbet for the top');
    expect(said('rabbet', { is: 'takes', takes: { part: 'cleat' }, stopped })).toBe(
      'rabbet for the cleat, stopped: 3 1/2 to 9 from the bottom end',
    );
  });

  test('work by hand keeps the words of whoever added it', () => {
    expect(said('hand', { is: 'own', said: 'Drill' })).toBe('Drill');
  });

  test('an edge over the end of the story stick stands past it', () => {
    const edge = (at: string): Which => ({ is: 'edge', edge: 'top', at: l(at), end: 'bottom' });
    expect(said('marks', edge('4 1/2'))).toBe('mark the story stick: top edge, 4 1/2 from the bottom');
    expect(said('marks', edge('-1/4'))).toBe('mark the story stick: top edge, 1/4 past the bottom');
  });

  test('a step at the bench says what is minded in it', () => {
    expect(said('hang')).toBe('hang the boxes: runs free, full out and home');
    expect(said('scribe')).toBe(
      'scribe the edge: compass down the wall; cut to the line, a little under square',
    );
    expect(said('filler')).toBe('fit the filler: at each side left open: its strip scribed to the wall');
  });
});
