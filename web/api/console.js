// @ts-check
/** The only place that asks the server for anything. Failures are thrown as {@link Refusal}. */
/** @typedef {import('../model/types.js').Problem} Problem */

export class Refusal extends Error {
  /** @param {number} status @param {Problem[]} problems */
  constructor(status, problems) {
    super(problems.map((p) => p.what).join('; '));
    this.status = status;
    this.problems = problems;
  }
}

/** @returns {Promise<import('../model/types.js').PageData>} */
export const fetchPage = () => ask('/api/assessment').then((r) => r.json());

/** HTML made by the server, with everything raw escaped. @param {string} id @returns {Promise<string>} */
export const fetchProcedure = (id) =>
  ask(`/api/procedures/${encodeURIComponent(id)}`).then((r) => r.text());

/** @param {string} windowId @returns {Promise<import('../model/types.js').SkyView>} */
export const fetchSky = (windowId) =>
  ask(`/api/windows/${encodeURIComponent(windowId)}/sky`).then((r) => r.json());

/** @param {number} days @returns {Promise<import('../model/types.js').LongLook>} */
export const fetchRecovery = (days) => ask(`/api/recovery?days=${days}`).then((r) => r.json());

/** What comes twice under one token is written down once. @param {string} kind @param {Record<string, string>} keys @param {string} token @returns {Promise<{number: number}>} */
export const postEntry = (kind, keys, token) =>
  ask('/api/journal', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ kind, keys, token }),
  }).then((r) => r.json());

/** @param {string} path @param {RequestInit} [init] */
export async function ask(path, init) {
  let response;
  try {
    response = await fetch(path, init);
  } catch (e) {
    if (e instanceof DOMException && e.name === 'AbortError') throw e;
    throw new Refusal(0, [{
      what: 'the console does not answer', where: location.host,
      mend: 'see whether `hark serve` still runs; what you typed stays here',
    }]);
  }
  if (!response.ok) throw new Refusal(response.status, await problemsOf(response));
  return response;
}

/** @param {Response} response @returns {Promise<Problem[]>} */
async function problemsOf(response) {
  try {
    return (await response.json()).problems;
  } catch {
    return [{ what: `the console answered ${response.status}`, where: '', mend: '' }];
  }
}
