export type Told = {
  readonly label: string;
  readonly entries?: readonly object[];
  readonly figure?: readonly [string, number];
  readonly refused?: string;
  /** The hash of a picture that the entries name. */
  readonly picture?: string;
};

export type Has = {
  readonly entries: readonly object[];
  readonly figures: Readonly<Record<string, number>>;
  readonly setAside: number;
};

export type Found = Readonly<Record<'lost' | 'changed' | 'torn' | 'twice' | 'unsaid' | 'setAside', number>>;

export declare function newLedger(): {
  readonly note: (act: Told) => void;
  readonly acts: () => number;
  readonly pictures: () => number;
  readonly refusals: () => number;
  readonly compare: (has: Has) => Found;
  readonly settle: (has: Has) => void;
};
