import type { Lot } from '../../job/loads';
import type { Label, LabelSet } from '../../plan/label-plan';
import { partWord } from './part-words';

const empty = 'empty';

export const setName = ({ named }: LabelSet): string => named || 'Drawers';

/** What stands on a label first. */
export const place = (label: Label): string =>
  label.on === 'drawer' ? partWord({ role: 'drawer', ...label.place }) : partWord(label.name, label.copy);

const lot = ({ name, count }: Lot): string => `${name || 'Thing'}${count > 1 ? ` × ${count}` : ''}`;

export const contents = ({ things }: Label): string =>
  things.length > 0 ? things.map(lot).join(', ') : empty;
