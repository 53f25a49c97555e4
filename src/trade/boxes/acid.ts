/** Woods whose vapours are acid enough to harm shell and lime. Common practice, no source: ask a conservator. */
const acidWoods = ['oak', 'chestnut'] as const;
type AcidWood = (typeof acidWoods)[number];

/** What is of shell or lime, by a word of its name. Common practice, no source. */
const lime =
  /\b(shells?|whelks?|conchs?|cowr(y|ies)|clams?|mussels?|oysters?|nautilus|corals?|pearls?|eggs?|calcite|aragonite|limestone|marble|chalk|travertine|dolomite)\b/i;

/** A stuff that gives off acid, and the things it would stand round. Names as the user wrote them. */
export type AcidRound = {
  readonly stuff: string;
  readonly wood: AcidWood;
  readonly things: readonly string[];
};

/**
 * Which stuffs a bank or its case is made of give off acid, where things of shell or lime go in. It goes by names
 * alone: a stuff called oak or chestnut, a thing called by a word of shell or lime.
 *
 * @param stuffs names of what stands round the things; @param things names of what goes in
 * @returns one a stuff, in order; none where either is missing
 * @example acidRound(['Oak, for the frame'], ['Whelk shells', 'Geodes']) // oak, round the whelk shells
 */
export function acidRound(stuffs: readonly string[], things: readonly string[]): readonly AcidRound[] {
  const harmed = things.filter((name) => lime.test(name));
  if (harmed.length === 0) return [];
  return [...new Set(stuffs)].flatMap((stuff) => {
    const wood = acidWoods.find((word) => new RegExp(`\\b${word}\\b`, 'i').test(stuff));
    return wood ? [{ stuff, wood, things: harmed }] : [];
  });
}
