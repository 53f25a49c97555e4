import { fromStored, toStored } from '../length/stored';
import type { OwnMachine } from '../trade/machines/shop';
import type { Json } from './entry';
import { isOwn, isTool } from './tool-order';

type Rows = Readonly<Record<string, Json>>;

/** Machines the shop added are kept among the things of its drawers: `shelf/machine/<id>/name|like|<figure>`. */
const ownKey = 'shelf/machine/';

/** What is kept of such machines, among all that is kept of this phone: by itself, over the lists once kept whole. */
export const ownRows = ({ lists, ...all }: Rows): Rows => ({
  ...(typeof lists === 'object' && lists !== null && 'own' in lists ? (lists.own as Rows) : {}),
  ...Object.fromEntries(Object.entries(all).filter(([key]) => key.startsWith(ownKey))),
});

/** The machines as kept, where there are any; one that was taken away works like nothing. */
export function ownMachines(rows: Rows): readonly OwnMachine[] | undefined {
  const read = new Map<string, Record<string, Json>>();
  for (const [key, value] of Object.entries(rows)) {
    const [id = '', field = ''] = key.slice(ownKey.length).split('/');
    read.set(id, { ...read.get(id), [field]: value });
  }
  const inOrder = [...read].sort(([a], [b]) => (a < b ? -1 : 1));
  const found = inOrder.flatMap(([id, { name, like, ...figures }]) =>
    isOwn(id) && isTool(like) ? [{ id, name: `${name ?? ''}`, like, figures: figuresOf(figures) }] : [],
  );
  return found.length > 0 ? found : undefined;
}

const figuresOf = (figures: Rows): OwnMachine['figures'] =>
  Object.fromEntries(
    Object.entries(figures).flatMap(([field, text]) => {
      const found = fromStored(`${text}`);
      return found.ok ? [[field, found.value]] : [];
    }),
  );

/** A machine as it is to be kept, each thing said of it by itself. */
export const rowsOfOwn = ({ id, name, like, figures }: OwnMachine): Rows => ({
  [`${ownKey}${id}/name`]: name,
  [`${ownKey}${id}/like`]: like,
  ...Object.fromEntries(
    Object.entries(figures).flatMap(([field, size]) =>
      size ? [[`${ownKey}${id}/${field}`, toStored(size)]] : [],
    ),
  ),
});
