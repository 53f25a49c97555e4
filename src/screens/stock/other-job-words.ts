export const take = 'Take the readings of another job';
export const whichJob = 'Measured in which job';
export const whichSheet = 'Which sheet or stick';
export const noneMeasured = 'Nothing is measured in that job.';
export const nameless = 'A job without a name';
export const sheet = 'Sheet';
export const readAs = (readings: readonly string[]): string => readings.join(', ');
export const taken = (name: string): string => `Readings of “${name || 'another job'}” taken`;
