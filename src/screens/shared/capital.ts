/** The same words with a capital at the start. @example capital('near wall') // 'Near wall' */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
