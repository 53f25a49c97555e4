/** Files no app should take: written by hand, and made from a good one by cutting, flipping and swapping. */
export declare function damaged(good: string, count: number): readonly string[];
