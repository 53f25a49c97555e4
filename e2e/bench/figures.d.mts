export type Row = {
  readonly name: string;
  readonly app: number | undefined;
  readonly beside?: number | undefined;
  readonly unit: string;
};

export declare function rowLine(row: Row): string;
