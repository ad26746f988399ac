// @ts-check
/**
 * What the server sends, as far as the page reads it. Names are those of the JSON contract.
 *
 * @typedef {{what: string, where: string, mend: string}} Problem
 * @typedef {{action: string, caution: string, why: string, window: string|null}} Headline
 * @typedef {{now: string, own: boolean, notice: string, rehearsal: boolean, held: boolean,
 *   speed: number, pace: number}} Clock
 * @typedef {{procedure: string, title: string, heardThisPass: number, heardThisPassError: number,
 *   heardByHorizon: number, informationBits: number, costHours: number, hazard: number,
 *   reach: number|null, rank: number, why: string, cautions?: string[]}} Option
 * @typedef {{object: string, aos: string, culmination: string, los: string, maxElevationDeg: number,
 *   aosAzimuthDeg: number, culminationAzimuthDeg: number, losAzimuthDeg: number}} Geometry
 * @typedef {{id: string, station: string, aos: string, culmination: string, los: string,
 *   maxElevationDeg: number, geometry: Geometry[], beaconOn: number, beaconOnError: number,
 *   socP25: number, socP50: number, socP75: number, minutesSinceSunrise: number,
 *   unattended: boolean, planned: string|null, options: Option[], notAvailable?: string|null}} Window
 * @typedef {{time: string, socP05: number, socP25: number, socP50: number, socP75: number,
 *   socP95: number, transmitting: number, sunlit: number}} EnergyPoint
 * @typedef {{probability: number, p10: string|null, p50: string|null, p90: string|null,
 *   note: string}} SelfRecovery
 * @typedef {{id: string, title: string, branch: string, prior: number, posterior: number,
 *   later: number, error: number, ifPriorHalved: number, ifPriorDoubled: number,
 *   inseparableGroup: string|null, selfRecovery: SelfRecovery, mechanism: string,
 *   signature: string, detail: {endedBy: string[], confirms: string, refutes: string,
 *     procedures: string[], begins: string, sources: string[]}}} Cause
 * @typedef {{id: string, title: string, join: 'or'|'and'|'at_least'|'not'|'event'|'elsewhere',
 *   atLeast: number, inputs: string[], prior: number|null, now: number|null, error: number}} TreeNode
 * @typedef {{means: string, shows: string, doesNot: string}} Separator
 * @typedef {{until: string, returns: {cause: string, title: string, bodies: number, sending: number,
 *   probability: number, p10: string|null, p50: string|null, p90: string|null, note: string,
 *   words: string}[]}} LongLook
 * @typedef {{events: string[], title: string, treeSilent: boolean, audibleShare: number,
 *   bodies: number}} TreeDisagreement
 * @typedef {{id: string, title: string, causes: string[], prior: number, posterior: number,
 *   error: number, wouldSeparate: string, separators: Separator[]}} Group
 * @typedef {{entry: number, at: string, kind: string, title: string,
 *   bits: Record<string, number>, tail?: number}} EvidenceView
 * @typedef {{number: number, kind: string, at: string, recordedAt: string, who: string,
 *   note: string, keys: Record<string, string>}} JournalEntry
 * @typedef {{station: string, from: string, to: string, maxElevationDeg: number}} PastWindow
 * @typedef {{object: string, from: string, stepSeconds: number, points: [number, number][]}} Track
 * @typedef {{skyline: [number, number][], tracks: Track[]}} SkyView
 * @typedef {{mission: string, now: string, separation: string, horizonDays: number,
 *   members: number, seed: number, remainder: number, remainderAtStart: number, remainderBound: number,
 *   misfit: number, doubts: string[], tree: TreeNode[], treeDisagreements: TreeDisagreement[],
 *   headline: Headline, silence: {lastHeard: string|null, silentPasses: number},
 *   explanations: {events: string[], title: string, prior: number, posterior: number,
 *     error: number}[],
 *   causes: Cause[], groups: Group[],
 *   objects: {object: string, name: string, prior: number, posterior: number}[],
 *   stations: {station: string, prior: number, works: number,
 *     faults: {id: string, title: string, posterior: number}[]}[], evidence: EvidenceView[],
 *   energy: EnergyPoint[], shadows: {from: string, to: string}[], cutoffSoc: number,
 *   windows: Window[],
 *   plan: {choices: {window: string, procedure: string}[], costHours: number,
 *     heardByHorizon: number, upperBound: number, meanDaysToHear: number},
 *   goingOn: {costHours: number, heard: number}[], crewHoursPerWeek: number,
 *   warnings: string[]}} Assessment
 * @typedef {{revision: number, working: boolean, provisional?: boolean, clock: Clock,
 *   assessment: Assessment, journal: JournalEntry[], pastWindows: PastWindow[]}} PageData
 */
export {};
