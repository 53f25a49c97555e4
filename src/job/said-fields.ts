import { length, text } from './kinds';

/**
 * One thing said of how something is built, under a word of its own: by a word, or how large. Which words there are is
 * known where they are read, so that the start of the app need not: one that is not known there stands for nothing.
 */
export const saidFields = { how: text(24), size: length };
