import { count, flag, moment, text } from './kinds';

/** A wait of glue or finish, as long as its bottle says, and since when it runs. */
export const timerFields = {
  name: text(120),
  hours: count,
  minutes: count,
  begun: moment,
  /** That it is over was seen. */
  seen: flag,
  gone: flag,
};
