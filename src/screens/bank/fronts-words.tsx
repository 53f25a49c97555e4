import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import '../../ui/mixed.css';

/** Under the title: how high the opening is, where that is known, and its gaps. */
export const sub = (high: Length | undefined, between: Length): string =>
  `${high ? `${w(high)} high, ` : ''}${w(between)} gaps`;

export const columns = 'Column';
export const uprights = 'Upright';
export const upright = { left: 'Left upright', right: 'Right upright' } as const;
export const figuresFrom = 'Figures from';
export const from = { top: 'From the top', bottom: 'From the bottom' } as const;

export const frontEnds = 'Front ends';
export const nextStarts = 'Next starts';
export const drawing = (fronts: number): string =>
  `Column of ${counted(fronts, 'front', 'fronts')}, to scale`;
export const before = 'before this change';

export const edges = (end: 'top' | 'bottom', wide: Blank) => (
  <>
    Edges from the {end}. Fronts are {wide} wide.{' '}
    <span class="nb">
      <b class="rem">+</b> strong
    </span>
    ,{' '}
    <span class="nb">
      <b class="rem">−</b> scant
    </span>
    .
  </>
);

export const together = 'Fronts together';
export const wide = 'Wide';
export const sill = 'Lower edge above the bottom';

export const measure = 'Measure the opening';
export const oneAtATime = 'Mark one at a time';
export const contents = 'What goes in them';
