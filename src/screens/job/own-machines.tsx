import { useState } from 'preact/hooks';
import { ownFields } from '../../trade/machines/own-machine';
import type { OwnField, OwnId, OwnMachine, Tool } from '../../trade/machines/shop';
import { Button, Chip } from '../../ui/button';
import { ChoiceDock, Dock } from '../../ui/dock';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { TextDock } from '../shared/ask-dock';
import { more } from '../shared/drawer-words';
import { ownName } from '../shared/machines/machine-names';
import { keepLists, listsOf } from '../shared/shop-lists';
import { kinds } from './figure-kinds';
import * as words from './own-words';

type Open =
  | { readonly what: 'like' }
  | { readonly what: 'name'; readonly id: OwnId }
  | { readonly what: 'away'; readonly id: OwnId }
  | { readonly what: 'figure'; readonly id: OwnId; readonly field: OwnField };

/** The machines the shop added for itself: each with its name, what it works like and its own figures. */
export function OwnMachines({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<Open>();
  const { own = [] } = listsOf(bench.settings.value);
  return (
    <section aria-label={words.title}>
      <div class="sechead">
        <h2 class="sec">{words.title}</h2>
        <Chip label={more(words.thing)} onTap={() => setOpen({ what: 'like' })} />
      </div>
      <p class="pad-x note">{words.note}</p>
      {own.map((one) => (
        <Machine key={one.id} one={one} onOpen={setOpen} />
      ))}
      {open && <Opened {...{ bench, own, open, setOpen }} />}
    </section>
  );
}

type MachineProps = { readonly one: OwnMachine; readonly onOpen: (open: Open) => void };

/** One machine: a tap on a figure measures it. */
const Machine = ({ one, onOpen }: MachineProps) => (
  <section aria-label={ownName(one)}>
    <div class="sechead">
      <h3 class="sec">{ownName(one)}</h3>
    </div>
    <p class="pad-x note">{words.worksLike(one.like)}</p>
    <ul>
      {ownFields[one.like].map((field) => (
        <li key={field}>
          <button type="button" class="nextset" onClick={() => onOpen({ what: 'figure', id: one.id, field })}>
            <span class="grow">{words.figure(field)}</span>
            {one.figures[field] ? (
              <Given value={one.figures[field]} />
            ) : (
              <span class="muted">{words.blank(field)}</span>
            )}
          </button>
        </li>
      ))}
    </ul>
    <div class="pad-x chips">
      <Chip label={words.rename} onTap={() => onOpen({ what: 'name', id: one.id })} />
      <Chip label={words.takeAway} onTap={() => onOpen({ what: 'away', id: one.id })} />
    </div>
  </section>
);

type OpenedProps = {
  readonly bench: Bench;
  readonly own: readonly OwnMachine[];
  readonly open: Open;
  readonly setOpen: (open: Open | undefined) => void;
};

function Opened({ bench, own, open, setOpen }: OpenedProps) {
  const onClose = () => setOpen(undefined);
  if (open.what === 'like') {
    const add = (like: Tool) => {
      const one: OwnMachine = { id: newId(bench), name: words.firstName(like), like, figures: {} };
      keepLists(bench, { own: [...own, one] });
      setOpen({ what: 'name', id: one.id });
    };
    return (
      <ChoiceDock
        title={words.likeTitle}
        choices={words.likes}
        chosen={undefined}
        onChoose={add}
        onClose={onClose}
      />
    );
  }
  const one = own.find(({ id }) => id === open.id);
  if (!one) return null;
  const keep = (patch: Partial<OwnMachine>) =>
    keepLists(bench, { own: own.map((other) => (other === one ? { ...one, ...patch } : other)) });
  return <OfMachine {...{ bench, own, open, one, keep, onClose }} />;
}

/** Of the time it was added, so that machines stand in that order; and of chance, so that no two phones make one. */
const newId = ({ newId: random }: Pick<Bench, 'newId'>): OwnId =>
  `own${Date.now().toString(36)}${random().slice(0, 4)}`;

type OfMachineProps = Pick<OpenedProps, 'bench' | 'own'> & {
  readonly open: Exclude<Open, { readonly what: 'like' }>;
  readonly one: OwnMachine;
  readonly keep: (patch: Partial<OwnMachine>) => void;
  readonly onClose: () => void;
};

function OfMachine({ bench, own, open, one, keep, onClose }: OfMachineProps) {
  if (open.what === 'name')
    return (
      <TextDock
        title={words.nameTitle}
        now={one.name}
        most={40}
        onDone={(name) => keep({ name: name.trim() || one.name })}
        onClose={onClose}
      />
    );
  if (open.what === 'away')
    return (
      <AwayDock
        one={one}
        cuts={cutsOn(bench, one)}
        sheets={cutsSheets(bench, one)}
        onAway={() => {
          onClose();
          keepLists(bench, { own: own.filter((other) => other !== one) });
        }}
        onClose={onClose}
      />
    );
  const { field } = open;
  return (
    <KeySheet
      key={field}
      title={words.figureOf(field, ownName(one))}
      tape="1/64"
      fill="length"
      kind={kinds[field]}
      now={one.figures[field]}
      onLength={(value) => keep({ figures: { ...one.figures, [field]: value } })}
      onClose={onClose}
    />
  );
}

const cutsOn = ({ plan }: Pick<Bench, 'plan'>, { id }: OwnMachine): number =>
  (plan.value?.operations ?? []).filter(({ setup }) => setup.own?.id === id).length;

/** The sheets of the job in hand are cut on it. */
const cutsSheets = ({ plan }: Pick<Bench, 'plan'>, { id }: OwnMachine): boolean => {
  const { guideSaw, fenceSaw } = plan.value?.job ?? {};
  return id === guideSaw || id === fenceSaw;
};

type AwayProps = {
  readonly one: OwnMachine;
  readonly cuts: number;
  readonly sheets: boolean;
  readonly onAway: () => void;
  readonly onClose: () => void;
};

/** Before a machine is taken away it is said what becomes of the cuts on it. */
const AwayDock = ({ one, cuts, sheets, onAway, onClose }: AwayProps) => (
  <Dock title={words.takenAway(ownName(one))} onClose={onClose}>
    <div class="body acts">
      <p>{words.afterwards(cuts)}</p>
      {sheets && <p>{words.sheetsAfterwards}</p>}
      <Button look="full" label={words.takeAway} onTap={onAway} />
    </div>
  </Dock>
);
