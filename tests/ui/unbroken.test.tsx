import { options, type VNode } from 'preact';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keepLengthsWhole } from '../../src/ui/unbroken';

const before = options.vnode;
beforeAll(keepLengthsWhole);
afterAll(() => {
  if (before) options.vnode = before;
  else delete options.vnode;
});

const childrenOf = (node: unknown) => (node as VNode<{ children: unknown }>).props.children;
const none = '\u00a0';

test.each([
  ['at 38 3/8 from the left', `at 38${none}3/8 from the left`],
  ['60 5/16 × 37 13/16: 7 13/16 too wide', `60${none}5/16 × 37${none}13/16: 7${none}13/16 too wide`],
  ['-1 1/2', `-1${none}1/2`],
  ['400 mm, 0.36 mm more', `400${none}mm, 0.36${none}mm more`],
  ['case 104.9 lb, drawers 35.4 lb', `case 104.9${none}lb, drawers 35.4${none}lb`],
  ['12 kg over', `12${none}kg over`],
])('a figure in “%s” does not break', (said, stands) => expect(childrenOf(<p>{said}</p>)).toBe(stands));

test.each(['3/8 over', 'Drawer 2 of 6', '12 mmm', '12 lbs', 'Shelf 1, 3/4 thick'])(
  '“%s” stays as it is',
  (said) => expect(childrenOf(<p>{said}</p>)).toBe(said),
);

test('among figures, in lists and without an element of its own', () => {
  const list = ['1 1/2', '2 1/4'];
  expect(
    childrenOf(
      <>
        At {'38 3/8'} up, {7}: {list}
      </>,
    ),
  ).toEqual(['At ', `38${none}3/8`, ' up, ', 7, ': ', [`1${none}1/2`, `2${none}1/4`]]);
  // the list of words itself keeps its plain spaces
  expect(list).toEqual(['1 1/2', '2 1/4']);
});

test('what a component is given it is given as said', () => {
  const Note = ({ children }: { readonly children: string }) => <b>{children}</b>;
  expect(childrenOf(<Note>38 3/8</Note>)).toBe('38 3/8');
});
