import type { Inside } from '../../trade/carcass/case';
import type {
  BoxRole,
  CopyName,
  DrawerPlace,
  HungRole,
  SingleRole,
  Thing,
  WorkName,
} from '../../trade/carcass/part-name';
import type { Board } from '../../trade/grooves/board';
import type { Copy } from '../../trade/grooves/copies';
import { capital } from './capital';

const words: Readonly<Record<SingleRole, string>> = {
  left: 'Left side',
  right: 'Right side',
  bottom: 'Bottom',
  top: 'Top',
  back: 'Back',
  cleat: 'Cleat',
  stile: 'Stile',
  middle: 'Middle stile',
  railtop: 'Top rail',
  railbottom: 'Bottom rail',
  toe: 'Toe board',
  loose: 'Loose top',
  edgefront: 'Front edging',
  edgeleft: 'Left edging',
  edgeright: 'Right edging',
  baserail: 'Base rail',
  basecross: 'Cross member',
  nailer: 'Nailer',
  plinthrail: 'Plinth rail',
  plinthcross: 'Plinth cross member',
  fillerleft: 'Left filler strip',
  fillerright: 'Right filler strip',
};

const insideWords: Readonly<Record<Inside['kind'], string>> = {
  trays: 'Tray',
  fixed: 'Fixed shelf',
  loose: 'Loose shelf',
  rail: 'Middle rail',
  stop: 'Stop strip',
};

/** A piece of a box; its front is told from the drawer's. */
const boxWord = (role: BoxRole): string => (role === 'boxfront' ? 'box front' : role.replace('box', ''));

/** What a box hangs on where that is no slide. */
const hungWords: Readonly<Record<HungRole, string>> = {
  runner: 'runner',
  hangstrip: 'strip',
  kicker: 'kicker',
  stopblock: 'stop block',
};

/** Which one, where there are several. */
const some = (before: string, which: CopyName | undefined): string =>
  which === undefined ? '' : `${before}${which}`;

/**
 * Which of its kind in its bay. Loose shelves and trays come in lots: beside another a lot has a letter, and its
 * pieces keep their numbers.
 */
const insideNo = ({ kind, no }: Pick<InsideName, 'kind' | 'no'>, copy: CopyName | undefined): string => {
  const lots = no !== undefined && (kind === 'loose' || kind === 'trays');
  return lots ? ` ${String.fromCharCode(64 + no)}${some('', copy)}` : some(' ', no ?? copy);
};

type InsideName = Extract<Thing, { readonly role: 'inside' }>;

const inColumn = (column: number | undefined): string => some(', column ', column);

const drawer = ({ no, column }: DrawerPlace): string => `Drawer ${no}${inColumn(column)}`;

/**
 * What a part is called, and one copy of it.
 *
 * @example partWord({ role: 'inside', kind: 'trays', bay: 1 }, 4) // 'Tray 4, bay 1'
 */
export function partWord(name: Thing, copy?: CopyName): string {
  switch (name.role) {
    case 'board':
      // the number stands before what the user said after a comma: `Shelf 2, top`
      return (name.named || 'Board').replace(/(?=, |$)/, some(' ', copy));
    case 'partition':
      return `Partition${some(' ', name.no)}`;
    case 'inside':
      return `${insideWords[name.kind]}${insideNo(name, copy)}${some(', bay ', name.bay)}`;
    case 'shelfedge':
      return `Shelf edging${insideNo({ ...name, kind: 'loose' }, copy)}${some(', bay ', name.bay)}`;
    case 'front':
      return `Front ${name.no}${inColumn(name.column)}`;
    case 'blank':
      return `Blank for the fronts${inColumn(name.column)}`;
    case 'drawer':
      return drawer(name);
    case 'slide':
      return `${drawer(name)}, ${name.hand} ${name.as ? hungWords[name.as] : 'slide'}`;
    case 'runner':
    case 'hangstrip':
    case 'kicker':
    case 'stopblock':
      return `${drawer(name)}, ${hungWords[name.role]}${some(' ', copy)}`;
    case 'side':
    case 'boxfront':
    case 'boxback':
    case 'boxbottom':
      return `${drawer(name)},${some(' ', copy)} ${boxWord(name.role)}`;
    case 'case':
      return name.named || 'Case';
    case 'scrap':
      return 'Test piece';
    case 'job':
      return 'The job';
    default:
      return `${words[name.role]}${some(' ', copy)}`;
  }
}

const copyWord = (copy: CopyName): string =>
  typeof copy === 'number' ? `no. ${copy}` : copy.length === 1 ? `face ${copy}` : copy;

const recutWord = (piece: string, recut: boolean | undefined): string => (recut ? `${piece}, recut` : piece);

/**
 * What is worked on: a piece with its copy, and whether it is made again.
 *
 * @example workWord({ of: { role: 'stile' }, copy: 2, recut: true }) // 'Stile 2, recut'
 */
export function workWord({ of, copy, recut, grooved }: WorkName): string {
  const piece = grooved && copy ? `${partWord(of)}, ${copyWord(copy)}` : partWord(of, copy);
  return recutWord(piece, recut);
}

/** What a board is called: the part it is, else as the user calls it. */
export const boardWord = ({ part, name }: Pick<Board, 'part' | 'name'>, unnamed = ''): string =>
  part ? partWord(part) : name || unnamed;

/** A copy of a board where the board itself is named above: `Left`, `No. 3`. */
export function copyOfBoard({ name, again }: Copy, { hand, part }: Board): string {
  const only = hand && part ? partWord(part) : 'This board';
  return recutWord(name ? capital(copyWord(name)) : only, again > 0);
}
