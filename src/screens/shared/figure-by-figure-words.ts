export const oneByOne = 'One figure at a time';
export const leave = 'Leave';
export const progress = (done: number, of: number): string => `${done} of ${of} done`;
export const next = 'Next';
export const allDone = 'All done';
export const tickAct = (what: string): string => `Done: ${what}`;
export const nothing = 'Nothing is worked out here yet: say first what it goes by.';
export const back = 'To what it goes by';
