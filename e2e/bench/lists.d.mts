export declare function fileOf(values: ReadonlyMap<string, unknown>): string;
