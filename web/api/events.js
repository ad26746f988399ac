// @ts-check
/**
 * Listens for news of the numbers, and comes back after a break for as long as the page is open.
 *
 * @typedef {{working: () => void, changed: () => void, failed: (p: import('../model/types.js').Problem[]) => void,
 *   lost: () => void, found: () => void, clock: () => void}} Ears
 */

const AGAIN_MS = 2000;

/** @param {Ears} ears */
export function listen(ears) {
  const source = new EventSource('/api/events');
  source.addEventListener('working', () => ears.working());
  for (const name of ['hello', 'resync', 'assessment']) {
    source.addEventListener(name, () => ears.changed());
  }
  source.addEventListener('failed', (e) => ears.failed(JSON.parse(e.data).problems));
  source.addEventListener('clock', () => ears.clock());
  source.onerror = () => {
    ears.lost();
    // The browser comes back by itself unless it was refused outright.
    if (source.readyState === EventSource.CLOSED) setTimeout(() => listen(ears), AGAIN_MS);
  };
  source.onopen = () => ears.found();
}
