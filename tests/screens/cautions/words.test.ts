import { describe, expect, test } from 'vitest';
import { partOf } from '../../../src/screens/cautions/parts';
import { partWords } from '../../../src/screens/cautions/words';
import { readRoute, writeRoute } from '../../../src/screens/routes';
import { type Part, parts } from '../../../src/screens/shared/caution-parts';
import { cautionWords } from '../../../src/screens/shared/caution-words';
import { grooveWords } from '../../../src/screens/shared/machines/groove-words';
import { cautions } from '../../../src/trade/cautions/caution';
import { grooveMachineIds } from '../../../src/trade/machines/stored-ids';

describe('a caution', () => {
  test.each(grooveMachineIds)('of the machine %s is the same at the saw and on a card', (machine) => {
    expect(cautionWords(machine)).toEqual(grooveWords[machine].caution);
  });

  test.each(cautions.map((c) => [c]))(
    '%s: one short line of a sentence, then more; plain, not shouting',
    (caution) => {
      const [short, more] = cautionWords(caution);
      expect(short.length).toBeLessThanOrEqual(40);
      expect(short).toMatch(/^[A-Z0-9].*[^.]\.$/);
      expect(more).toMatch(/^[A-Z].*\.$/);
      // five lines of a phone's width, in the bar of a card
      expect(`${short} ${more}`.length).toBeLessThanOrEqual(200);
      expect(`${short} ${more}`).not.toMatch(/!|[Pp]lease|[A-Z]{2}/);
    },
  );

  test.each([
    ['finish-inside', ['air', 'rags', 'cure', 'oak', 'glue', 'acid', 'shell', 'lime']],
    [
      'level',
      [
        'pipes',
        'wires',
        'heating tubes',
        'licensed electrician',
        'stud',
        'solid fixing',
        'children',
        'tip',
        'rawers out',
      ],
    ],
    [
      'anchor',
      [
        'ipes',
        'wires',
        'eating tubes',
        'licensed electrician',
        'stud',
        'hildren',
        'One loaded drawer',
        'tips',
      ],
    ],
    ['scribe', ['holds it', 'tips', 'rawers out', 'hildren', 'hands behind']],
    ['filler', ['with a block', 'Guard on', 'not anchored']],
    ['cleat', ['pipes', 'wires', 'tubes', 'licensed electrician', 'Two hold', 'eyes']],
    ['check-again', ['loaded', 'lever', 'no hand under']],
    ['cure', ['air', 'rags', 'acid', 'shell', 'lime']],
    ['label', ['One loaded drawer', 'child']],
    ['look-back', ['fixing', 'week']],
    ['stack', ['nplugged', 'with care', 'loves']],
    ['load', ['nchored before', 'estimates']],
    ['crosscut', ['pulls itself along']],
    ['stop', ['pulls itself along']],
    ['dovetail', ['never raised', 'scrap behind', 'lamps']],
    ['hang', ['nchored', 'One drawer']],
    ['old-finish', ['lead']],
    ['fence', ['uard', 'nothing freehand', 'itre gauge']],
  ] as const)('%s says what it must', (caution, words) => {
    const said = cautionWords(caution).join(' ');
    for (const word of words) expect(said).toContain(word);
  });

  test('of the story stick says nothing of short sticks, that of finishing nothing of lifting', () => {
    expect(cautionWords('marks').join(' ')).not.toMatch(/short|fence|blade/);
    expect(cautionWords('finish-inside').join(' ')).not.toMatch(/50 lb|lift/);
  });
});

describe('Before you cut', () => {
  test('has a part for each caution, and none but that of all cutting without one', () => {
    const reached = new Set<Part>(cautions.map(partOf));
    expect(parts.filter((part) => !reached.has(part))).toEqual(['all-cutting']);
  });

  test.each([
    [
      'all-cutting',
      ['manual', 'eyes', 'ears', 'dust', 'gloves', 'Unplug', 'Stop the machine before you touch the phone'],
    ],
    [
      'table-saw',
      ['straight back on', 'insert', 'push block', 'freehand', 'too narrow', 'mitre gauge', 'stand-off'],
    ],
    ['crosscut-saw', ['pull itself along', 'outside the line', 'clear of chips', 'stopped']],
    ['circular-saw', ['both halves', 'past the sheet', 'behind', 'over the knee']],
    ['router', ['against the turn', 'no light pass', 'Clamp', 'stopped before you lift']],
    ['dovetails', ['Do not raise', 'lamps', 'scrap behind']],
    ['small-pieces', ['long stock', 'block, not fingers']],
    ['fasteners', ['grain', 'pipes, wires and heating tubes', 'licensed electrician', 'local code']],
    ['old-finishes', ['lead', 'est before', 'wet', 'local rule']],
    ['lifting', ['50 lb', 'ath cleared', 'obody below', 'held by hand']],
    ['tall-units', ['before anything is loaded', 'one loaded drawer', 'child', 'tips']],
    ['finish', ['air', 'ags', 'cure', 'acid']],
    ['loads', ['estimates', 'engineer', 'museum']],
  ] as const)('says under %s what is usual there', (part, words) => {
    const said = partWords[part].lines.join(' ');
    for (const word of words) expect(said).toContain(word);
  });

  test('keeps in its address the caution that was tapped and where it stood', () => {
    const from = writeRoute({ at: 'saw', board: 'shell case', setting: 'r1~3~near/%' }).slice(2);
    const route = { at: 'before', caution: 'fence', from } as const;
    const back = readRoute(writeRoute(route));
    expect(back).toEqual(route);
    expect(readRoute(back.at === 'before' ? (back.from ?? '') : '')).toEqual({
      at: 'saw',
      board: 'shell case',
      setting: 'r1~3~near/%',
    });
    expect(readRoute(writeRoute({ at: 'before' }))).toEqual({ at: 'before' });
  });
});
