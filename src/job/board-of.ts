import type { Board, Run, Wide } from '../trade/grooves/board';
import { boardFields, runFields, wideFields } from './fields';
import { placesOf } from './listed';
import { children, pick, type Tree } from './tree';

/** A board laid out by hand, as it was read; none where it was taken away. */
export function boardIn(node: Tree, id: string): readonly Board[] {
  const { gone, ...own } = pick(boardFields, node);
  if (gone) return [];
  return [
    {
      ...newBoard(id),
      ...own,
      runs: children(node, 'runs').flatMap(([key, run]) => readRun(key, run)),
      wides: children(node, 'wides').flatMap(([key, wide]) => readWide(key, wide)),
    },
  ];
}

/** A board before anything is said of it. */
export const newBoard = (id: string): Board => ({
  id,
  name: '',
  made: 'alike',
  copies: 1,
  end: 'bottom',
  mateName: 'partition',
  runs: [],
  wides: [],
  machine: 'stop',
  against: 'reference',
  stopSide: 'left',
  grows: 'away',
  guide: 'reference',
});

export const newRun = (id: string): Run => ({
  id,
  spacing: 'pitch',
  face: 'A',
  point: 'near',
  centred: false,
  at: [],
});

function readRun(id: string, node: Tree): readonly Run[] {
  const { gone, ...own } = pick(runFields, node);
  return gone ? [] : [{ ...newRun(id), ...own, ...placesOf(own.at ?? [], children(node, 'place')) }];
}

function readWide(id: string, node: Tree): readonly Wide[] {
  const { gone, ...own } = pick(wideFields, node);
  return gone ? [] : [{ id, face: 'A', ...own }];
}
