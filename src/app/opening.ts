/**
 * Where a start goes instead of the screen that froze: to the list of jobs, or past it to what works nothing out at
 * all.
 */
export const besides = (left: string): string => (left === '#/jobs' ? '#/phone' : '#/jobs');
