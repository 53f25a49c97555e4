import { describe, expect, test } from 'vitest';
import { type Bundled, noticesOf, packageOf } from '../../build/notices';

const mit = (owner: string, wrap = ' '): string =>
  [
    'MIT License',
    owner,
    `Permission is hereby granted,${wrap}free of charge, to any person.`,
    `THE SOFTWARE IS PROVIDED${wrap}"AS IS".`,
  ].join('\n\n');

const bundled = (name: string, text: string, license = 'MIT'): Bundled => ({
  name,
  version: '1.0.0',
  license,
  text,
});

describe('packageOf', () => {
  test.each([
    ['/a/node_modules/idb/build/index.js', 'idb'],
    ['/a/node_modules/@preact/signals/dist/signals.mjs', '@preact/signals'],
    ['/a/node_modules/one/node_modules/@of/two/index.js', '@of/two'],
    ['C:\\a\\node_modules\\idb\\index.js', 'idb'],
    ['\0vite/preload-helper.js', 'vite'],
    ['\0rolldown/runtime.js', 'rolldown'],
    ['/a/src/app/main.tsx', undefined],
    ['/a/my-node_modules/x.js', undefined],
  ])('%j is of %s', (id, name) => expect(packageOf(id)).toBe(name));
});

describe('noticesOf', () => {
  test('says terms that differ by line breaks and quotation marks once, below each owner', () => {
    const text = noticesOf([
      bundled('second', mit('Copyright (c) 2020 B', '\n').replaceAll('"', '”')),
      bundled('first', mit('Copyright (c) 2019 A')),
    ]);
    expect(text.match(/Permission is hereby granted/g)).toHaveLength(1);
    expect(text).toContain('first 1.0.0\n  Copyright (c) 2019 A\nsecond 1.0.0\n  Copyright (c) 2020 B\n\n');
  });

  test('keeps other terms apart, and every word of them', () => {
    const isc = 'ISC License\nCopyright (c) 2016, C\n\nPermission to use.\n\nTHE AUTHOR DISCLAIMS.';
    const text = noticesOf([bundled('a', mit('Copyright 2018 A')), bundled('c', isc, 'ISC')]);
    expect(text).toContain('c 1.0.0\n  Copyright (c) 2016, C\n\nPermission to use.\n\nTHE AUTHOR DISCLAIMS.');
    expect(text).toContain('any person.\n\nTHE SOFTWARE IS PROVIDED "AS IS".');
  });

  test('leaves out what is bundled in the bundler', () => {
    const more = `${mit('Copyright 2019 V')}\n\n# Licenses of bundled dependencies\n\nCopyright 2001 Other`;
    expect(noticesOf([bundled('vite', more)])).not.toContain('Other');
  });

  test.each([
    ['other terms', bundled('x', mit('Copyright 2020 X'), 'Apache-2.0'), 'x is under Apache-2.0'],
    ['terms of two', bundled('x', mit('Copyright 2020 X'), '(MIT AND Zlib)'), 'x is under'],
    ['no owner', bundled('x', mit('By X')), 'cannot be read'],
    ['no terms', bundled('x', 'Copyright 2020 X\n\nDo as you like.'), 'cannot be read'],
  ])('refuses %s', (_, one, says) => expect(() => noticesOf([one])).toThrow(says));
});
