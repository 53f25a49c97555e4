import type { ReadonlySignal } from '@preact/signals';
import type { Doubled } from '../job/doubled';
import type { Change, Entry, Json } from '../job/entry';
import type { Comparison, JobFile } from '../job/file';
import type { Job, Stock } from '../job/job';
import type { Folded } from '../job/log';
import type { Settings } from '../job/settings';
import type { Length } from '../length/length';
import type { Plan, TooMuch } from '../plan/plan';
import type { SaveError } from '../store/db';
import type { HandedError } from '../store/handover/handed';
import type { Known } from '../store/handover/known';
import type { Kept } from '../store/persisted';
import type { JobLine, KeptIn } from '../store/store';
import type { Shop, ShopField } from '../trade/machines/shop';
import type { Copies } from './copies';
import type { Home } from './home';
import type { Route } from './routes';
import type { LayingBench } from './shared/laying';

export type { JobLine, Kept, KeptIn };

/** A file looked at before anything of it is taken. */
export type Offered = {
  readonly file: JobFile;
  readonly against?: Comparison;
  /** What the phone that handed it over has of the job. */
  readonly theirs: Known;
};

/** How a file came here: chosen by hand in the app, opened with it, or shared to it. */
export type CameBy = 'chosen' | 'opened' | 'shared';

/** Why a newer version may not start just now. */
export type UpdateHeld = 'at-the-saw' | 'entry-open' | 'not-secured';

/** The jobs kept here: opened, made, put away and brought back. */
export type Shelf = {
  readonly jobs: ReadonlySignal<readonly JobLine[]>;
  /** @param like begun like the job in hand: with what was decided there, and with its readings or without */
  readonly newJob: (name: string, like?: { readonly readings: boolean }) => Promise<void>;
  /** The stock of another job of this phone, with what was read of it. */
  readonly stockOf: (id: string) => Promise<readonly Stock[]>;
  readonly openJob: (id: string) => Promise<void>;
  readonly deleteJob: () => Promise<void>;
  readonly bringBack: (id: string) => Promise<void>;
  readonly jobFile: () => Promise<string>;
};

/** What could not be kept, and why: a change by its label, a figure or a setting of the phone by its key. */
type Unsaved = { readonly label?: string; readonly key?: string; readonly why: SaveError };

/** What comes in from outside: looked at first, then taken or let go. */
export type Incoming = {
  readonly offered: ReadonlySignal<Offered | HandedError | TooMuch | undefined>;
  /** How what is offered came here. */
  readonly cameBy: ReadonlySignal<CameBy>;
  readonly offer: (text: string, by?: CameBy) => Promise<void>;
  readonly take: (how: 'merge' | 'keep-both') => Promise<void>;
  readonly letGo: () => void;
  readonly openSample: () => Promise<void>;
  /** Everything in one file, out and in; undefined until the second file of the app is there. */
  readonly copies: ReadonlySignal<Copies | undefined>;
};

/** This phone: what it keeps and how safely, the version of the app, what it hands to others. */
export type ThisPhone = {
  /** The screen the last start froze over, as a hash route: left closed. */
  readonly left: string | undefined;
  readonly keptIn: ReadonlySignal<KeptIn>;
  /** Entries the browser had lost and the second copy gave back. */
  readonly restored: ReadonlySignal<number>;
  readonly seenRestored: () => void;
  readonly kept: ReadonlySignal<Kept>;
  /** Rows that could not be read and were set aside. */
  readonly setAside: ReadonlySignal<number>;
  readonly asideFile: () => Promise<string>;
  /** Brings database and second copy to hold the same. */
  readonly evenOut: () => Promise<void>;
  readonly updateWaiting: ReadonlySignal<boolean>;
  /** The app is served from the phone: it works with no signal. */
  readonly servedHere: ReadonlySignal<boolean>;
  /** Starts the waiting version; what holds it, when it may not. */
  readonly startUpdate: () => Promise<UpdateHeld | undefined>;
  readonly home: Home;
  readonly share: (name: string, text: string) => Promise<'shared' | 'saved' | 'left'>;
  /** `late`: the share sheet wants another tap. */
  readonly sharePdf: (name: string, pdf: Blob) => Promise<'shared' | 'saved' | 'left' | 'late'>;
  /** A newer page has what is kept here: this one only shows. */
  readonly readOnly: ReadonlySignal<boolean>;
};

/** What every screen stands on: the job in hand, this phone's figures, and what can be done. App makes it. */
export type Bench = {
  readonly route: ReadonlySignal<Route>;
  readonly job: ReadonlySignal<Job | undefined>;
  /** Everything worked out from the job: parts, operations, the order of setups. */
  readonly plan: ReadonlySignal<Plan | undefined>;
  readonly folded: ReadonlySignal<Folded>;
  readonly entries: ReadonlySignal<readonly Entry[]>;
  readonly shop: ReadonlySignal<Shop>;
  readonly settings: ReadonlySignal<Settings>;
  /** Places where readings of two phones stand beside each other, until one is picked. */
  readonly doubled: ReadonlySignal<readonly Doubled[]>;
  /** Whether a name in the log is this phone's. */
  readonly own: (name: string) => boolean;
  /** Name of the act that undo would take back. */
  readonly undoLabel: ReadonlySignal<string | undefined>;
  /** Everything that could not be kept and waits, in the order it was done. */
  readonly unsaved: ReadonlySignal<readonly Unsaved[]>;
  /** Whether anything keyed or tapped is on its way to storage. */
  readonly underWay: ReadonlySignal<boolean>;
  /** Operations written to storage and not yet confirmed. */
  readonly saving: ReadonlySignal<ReadonlySet<string>>;

  /** Looks at the address again: the screen shown is the one it names. */
  readonly arrive: () => void;
  readonly go: (route: Route, replace?: boolean) => void;
  readonly act: (label: string, changes: readonly Change[]) => Promise<boolean>;
  readonly undo: () => Promise<void>;
  readonly newId: () => string;
  readonly keep: (patch: Partial<Settings>) => Promise<void>;
  /** Things of the shop's drawers, each by its own key. */
  readonly keepOnShelf: (patch: Readonly<Record<string, Json>>) => Promise<void>;
  readonly keepShop: (field: ShopField, value: Length | undefined) => Promise<void>;
  /** Figure as it is kept: see `figure.kept.ts`. */
  readonly figure: ReadonlySignal<Readonly<Record<string, Json>>>;
  readonly keepFigure: (rows: Readonly<Record<string, Json>>) => void;
  readonly tryAgain: () => Promise<void>;
  readonly letUnsavedGo: () => void;
  readonly laying: LayingBench;
  readonly holdSaw: () => () => void;
  readonly shelf: Shelf;
  readonly incoming: Incoming;
  readonly phone: ThisPhone;
};
