/** A machine cuts were put on, that this phone's shop has not. */
export const goneText = (name: string | undefined): string =>
  `${name ? `${name} is` : 'The machine this was put on is'} not among the machines of this phone: the cut is on the usual one until you add it or move the cut.`;
