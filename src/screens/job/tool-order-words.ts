export const title = 'Machines, in the order they are tried';
export const notSaid =
  'While the order is not yours, a cut stays on its usual machine; where that lacks something, the first of these that can is offered.';
export const said =
  'The first that lacks nothing rips a piece, and cuts it to length, unless you moved that cut. Grooves stay on the machine they were put on.';
export const nothingKnown = 'nothing of it measured, so it is passed over';
export const up = (name: string): string => `${name}: try it one sooner`;
export const keepThis = 'Cut in this order';
export const asUsual = 'As usual';
