// @ts-check
import { Refusal, fetchRecovery } from '../api/console.js';

const FAR_DAYS = 365;

/** Asks a year ahead for dates of return. @param {import('../model/state.js').State} s @param {() => void} draw */
export async function lookFar(s, draw) {
  const far = s.farAhead = { ...s.farAhead, asked: true, problems: [] };
  draw();
  try {
    far.look = await fetchRecovery(FAR_DAYS);
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    far.problems = e.problems;
  }
  far.asked = false;
  draw();
}
