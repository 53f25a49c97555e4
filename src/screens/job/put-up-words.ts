export const labels = 'Labels';
export const lookBack = 'Look back';
/** Notes for next time, of the job before. */
export const fromLast = (job: string): string => `Noted for next time${job ? `, ${job}` : ''}`;
