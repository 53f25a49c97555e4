/** Notes for next time, of the job before. */
export const fromLast = (job: string): string => `Noted for next time${job ? `, ${job}` : ''}`;
export const takeOver = 'Keep in mind here';
export const takenOver = 'Note taken over';
export const failed = 'What failed last time';

/** What failed last time with one thing more. @example withNote('Trays jammed', 'Buy the back first') */
export const withNote = (said: string, note: string): string => (said ? `${said}; ${note}` : note);
