export const title = 'All jobs';
export const newJob = 'New job';
export const newName = 'Name of the new job';
export const none = 'No job yet. A job can be one board.';
export const nameless = 'A job without a name';
export const inHand = 'in hand';
export const bringIn = 'Bring a job file in';
export const openSample = 'Open the sample job';
export const deleteJob = (name: string): string => `Delete “${name || 'this job'}”`;

export const deleted = 'Deleted';
export const comeBack = 'Can be restored for 30 days.';
export const bringBack = 'Restore';
