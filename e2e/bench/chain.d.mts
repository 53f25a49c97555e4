type Drawn = { readonly cases: number; readonly boards: number; readonly seed: number };
type Values = ReadonlyMap<string, unknown>;

export declare const drawnFor: { readonly small: Drawn; readonly large: Drawn };
export declare function modulesOf(): Promise<object>;
export declare function jobOfMany(drawn: Drawn, app: object): Values;
