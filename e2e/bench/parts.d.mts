export type Part<Row> = {
  readonly name: string;
  readonly rows: () => AsyncIterable<Row> | Iterable<Row>;
  readonly line: (row: Row) => string;
};

export declare function runParts<Row>(
  parts: readonly Part<Row>[],
  print: (line: string) => void,
): Promise<{ readonly passed: number; readonly failed: number }>;

export declare function once<Made>(make: () => Made): () => Made;
