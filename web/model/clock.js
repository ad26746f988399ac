// @ts-check
import { ms } from './time.js';

/** What time it is for the mission. @param {import('./types.js').Clock} clock as the server told it @param {number} sinceMs since it did */
export const nowOf = (clock, sinceMs) => ms(clock.now) + clock.pace * sinceMs;
