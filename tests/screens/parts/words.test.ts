import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/parts/words';
import type { Part } from '../../../src/trade/carcass/part';
import { withDado } from '../../../src/trade/joints/dado-by-hand';
import { withHoles } from '../../../src/trade/joints/holes-by-hand';
import { l } from '../../length/write-figures';
import { at, opened } from '../../plan/laid-sample';

const { plan } = at(opened.entries);

const partOf = (id: string): Part => {
  const found = plan.parts.find((p) => p.id === id);
  if (!found) throw new Error(`no part ${id}`);
  return found;
};

const side = partOf('case~left');

describe('how many of a part there are', () => {
  test.each([
    [1, 0, 6, 'one'],
    [1, 2, 6, 'one · 2 of 6 cut'],
    [3, 6, 6, '3 of them · all cut'],
    [3, 0, 6, '3 of them'],
  ])('%i with %i of %i cuts', (copies, cut, of, says) =>
    expect(words.state({ ...side, copies }, cut, of)).toBe(says),
  );

  test('and what it comes out of, or that it is by hand', () => {
    const stuff = { name: 'Birch', thickness: l('23/32') };
    expect(words.madeOf({ ...side, copies: 1 }, stuff)).toBe('Birch, 23/32');
    expect(words.madeOf({ ...side, copies: 2 }, undefined)).toBe('2 of them, by hand');
  });
});

describe('a part in words', () => {
  test('its length says where it stands, where that is the bottom', () => {
    expect(words.long({ ...side, end: 'bottom' })).toBe('Long, bottom to top');
    expect(words.long({ ...side, end: 'left' })).toBe('Long');
  });

  test('the drawing names the rabbet only where it shows', () => {
    expect(words.lies(side, {})).toBe('Bottom end at the left, on the blue block.');
    expect(words.lies(side, { rabbet: l('3/8') })).toContain(
      'The back edge lies at the top, its rabbet 3/8 wide.',
    );
  });

  test('of a part that stands it says which edge lies at the bottom, once something is cut along one', () => {
    const made = { ...partOf('drawers~c1d1side'), rabbets: [] };
    expect(words.lies({ ...made, along: [] }, {})).toBe('Back end at the left, on the blue block.');
    expect(words.lies(made, {})).toBe(
      'Back end at the left, on the blue block. The bottom edge lies at the bottom.',
    );
  });

  // the side is 64 1/4 long: 1/64 of a stop is at the tape 1/32, at either end
  test('a stop is said as its cut says it: on the tape, each from the end it is near', () => {
    const along = { at: 'edge', named: 'back' } as const;
    const rabbet = { ...side.rabbets[0], along, from: l('1/64'), to: l('64 15/64') };
    const [line] = words.joints({ ...side, rabbets: [rabbet] as Part['rabbets'] }, '1/32');
    expect(line).toContain('stopped: 1/32 to 64 7/32 from the bottom end.');
  });

  test.each([
    ['case~left', 'the inside face', 'front'],
    ['case~bottom', 'the upper face', 'front'],
    ['case~shelf', 'the upper face', 'front'],
    ['case~partition1', 'face A (left)', 'front'],
    ['case~stile', 'the inside face', 'left'],
    ['drawers~c1d1front', 'the inside face', 'bottom'],
  ])('a row of holes of %s says in which face it is bored', (id, face, edge) => {
    const made = withHoles(partOf(id), {
      id: 'xr',
      face: 'A',
      off: l('1'),
      dia: l('1/4'),
      deep: l('3/8'),
      pitch: l('1'),
      first: l('2'),
      count: 3,
    });
    expect(words.joints(made, '1/32').join('\n')).toContain(
      `Holes 1/4 wide and 3/8 deep in ${face}, 1 from the ${edge} edge: row added by hand: 3 holes`,
    );
  });

  test('a dado and a notch added by hand say where from the end, and in which edge', () => {
    const cut = { id: 'xj', near: l('8'), width: l('1/2'), depth: l('1/4') };
    const made = withDado(side, { ...cut, face: 'A', said: 'a rail' }, {});
    expect(words.joints(made, '1/32')).toContain(
      'Dado for a rail: 8 from the bottom end, 1/2 wide, 1/4 deep.',
    );
    const box = partOf('drawers~c1d1side');
    const notch = { id: 'xn', near: l('4'), long: l('3/4'), deep: l('3/8'), takes: { said: '' } };
    expect(words.joints({ ...box, notches: [notch] }, '1/32')).toContain(
      'Notch 4 from the back end: 3/4 long, 3/8 deep, in the bottom edge.',
    );
  });

  test('what is cut in it has a line each; a stopped rabbet says from where to where', () => {
    const cut = { id: 'c', near: l('4'), long: l('3/4'), deep: l('3/8') };
    const along = { at: 'edge', named: 'back' } as const;
    const rabbet = { ...partOf('case~left').rabbets[0], id: 'r', along, width: l('1/2'), depth: l('1/4') };
    const lines = words.joints(
      {
        ...side,
        rabbets: [
          { ...rabbet, takes: { part: 'back' } },
          { ...rabbet, takes: { part: 'back' }, from: l('2'), to: l('30') },
        ] as Part['rabbets'],
        notches: [cut],
        laps: [cut],
      },
      '1/32',
    );
    expect(lines).toEqual([
      expect.stringMatching(/1\/2 wide along the back edge, 1\/4 deep\.$/),
      expect.stringContaining('stopped: 2 to 30 from the bottom end.'),
      'Notch 4 from the bottom end: 3/4 long, 3/8 deep; all partitions clamped as one.',
      'Lap 4 from the bottom end: 3/4 long, 3/8 deep, in its show face.',
    ]);
  });

  test('a lap of the face frame says which face it is cut in', () => {
    const lap = { id: 'laptop', near: l('38'), long: l('2'), deep: l('3/8') };
    const piece = { ...side, rabbets: [], notches: [], laps: [lap], inFrame: true };
    const said = (own: Part) => words.joints(own, '1/32')[0];
    expect(said({ ...piece, lapsFromBack: true })).toBe(
      'Lap 38 from the bottom end: 2 long, 3/8 deep, in its back.',
    );
    expect(said(piece)).toBe('Lap 38 from the bottom end: 2 long, 3/8 deep, in its show face.');
  });

  // the frame lies flat, what stands on it on its upper face: the cross members lie over the rails
  test('a lap of a base frame says it likewise', () => {
    const lap = { id: 'lap1', near: l('0'), long: l('2'), deep: l('3/8') };
    const said = (role: 'baserail' | 'basecross') =>
      words.joints({ ...side, name: { role }, rabbets: [], laps: [lap] }, '1/32')[0];
    expect(said('baserail')).toBe('Lap 0 from the bottom end: 2 long, 3/8 deep, in its upper face.');
    expect(said('basecross')).toBe('Lap 0 from the bottom end: 2 long, 3/8 deep, in its under face.');
  });

  test('a size says which way it was rounded, and why', () => {
    expect(words.rounded('floor', l('11 1/3'))).toMatch(/^Rounded down: it must go in\. Exact: 11/);
    expect(words.rounded('ceil', l('1/2'))).toBe('Rounded up: it must take something in. Exact: 1/2.');
  });
});

describe('a cut of a part', () => {
  const [op] = plan.operations.filter((o) => o.part === side.id);
  if (!op) throw new Error('a cut is wanted');

  test('names its copy where there are several', () => {
    expect(words.operation(op, { copies: 1, tape: '1/32' }, undefined)).toBe('rip');
    expect(words.operation(op, { copies: 2, tape: '1/32' }, undefined)).toBe('Left side: rip');
  });

  test('says what it was cut to where that is no longer wanted', () => {
    expect(words.operation({ ...op, figure: l('30') }, { copies: 1, tape: '1/32' }, l('29'))).toMatch(
      /; cut at 29, but should now be 30$/,
    );
  });
});
