export const title = 'All jobs';
export const newJob = 'New job';
export const newName = 'Name of the new job';
export const beginLike = 'Begin another like the one in hand';
export const takeAlong = 'What goes along';
export const decided = 'What was decided';
export const decidedHint = 'sizes, joints, wood, drawers; nothing measured, nothing ticked';
export const readings = 'The readings too';
export const readingsHint = 'for the same sheets in the same room; nothing ticked';
export const none = 'No job yet. A job can be one board.';
export const nameless = 'A job without a name';
export const inHand = 'in hand';
export const bringIn = 'Bring a job file in';
export const openSample = 'Open the sample job';
export const deleteJob = (name: string): string => `Delete “${name || 'this job'}”`;

export const deleted = 'Deleted';
export const comeBack = 'Can be restored for 30 days.';
export const bringBack = 'Restore';
