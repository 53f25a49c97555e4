export type Case = {
  readonly name: string;
  readonly verdict: 'good' | 'BAD' | 'ONE COPY' | 'SKIPPED';
  readonly sum: Readonly<Record<string, number | undefined>>;
};

export declare function tableOf(cases: readonly Case[]): string;
export declare function legendOf(cases: readonly Case[]): string;
