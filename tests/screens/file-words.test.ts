import { expect, test } from 'vitest';
import { cameText } from '../../src/screens/job/file-words';

test.each([
  ['chosen', undefined],
  ['opened', 'This file was opened with Knifeline, not chosen here.'],
  ['shared', 'Another app shared this. Take it in only if you sent it here yourself.'],
] as const)('of a file that was %s', (by, says) => expect(cameText(by)).toBe(says));
