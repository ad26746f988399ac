// @ts-check
/** Wires the page of orbits: asks once for each revision what is known of them. */
import { fetchOrbit } from './api/orbit.js';
import { asking } from './shell/asking.js';
import { orbitMain } from './view/orbit.js';

/** @param {import('./model/shell.js').Shell} shell @returns {import('./model/shell.js').Page} */
export function page({ s, draw }) {
  const { ask, asks, slow } = asking(draw);
  /** @type {import('./view/orbit.js').Mine} */
  const mine = { data: undefined, problems: [], slow };
  let asked = 0;
  return {
    title: 'orbit',
    skip: ['#orbit-objects', 'to the objects'],
    draw: () => orbitMain(s, mine),
    shown() {
      const revision = s.page.revision;
      if (asked === revision || asks('orbit')) return;
      asked = revision;
      ask('orbit', fetchOrbit, (data) => { mine.data = data; }, (problems) => { mine.problems = problems; });
    },
  };
}
