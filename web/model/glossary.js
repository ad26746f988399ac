// @ts-check
/**
 * Words of the trade and of the reckoning, each in one or two sentences.
 *
 * @typedef {{word: string, means: string}} Word
 */

/** By key. @type {Record<string, Word>} */
export const GLOSSARY = {
  aos: { word: 'AOS', means: 'Acquisition of signal: the moment it rises over the station’s skyline. By prediction; nothing need be heard.' },
  los: { word: 'LOS', means: 'Loss of signal: the moment it sets behind the station’s skyline.' },
  culmination: { word: 'culmination', means: 'The highest point of a pass. Near it the path is shortest, the signal strongest, and Doppler changes fastest.' },
  window: { word: 'window', means: 'One pass over one station, from the rise of the likeliest object to its setting.' },
  azimuth: { word: 'azimuth', means: 'Direction along the horizon, in degrees from north through east.' },
  elevation: { word: 'elevation', means: 'Height over the level horizon, in degrees; 90° is overhead.' },
  skyline: { word: 'skyline', means: 'What hills and houses hide, as elevation for each azimuth. Below it nothing is received.' },
  candidate: { word: 'candidate', means: 'One of the catalogued objects that may be ours. Until one is confirmed, each carries a share.' },
  doppler: { word: 'Doppler', means: 'The shift of frequency by motion along the line of sight: up while it comes nearer, down while it goes away.' },
  beacon: { word: 'beacon', means: 'The short transmission the spacecraft repeats by itself at a fixed interval.' },
  'beacon-on': { word: 'beacon on', means: 'The chance that at least one burst is sent while it is above the skyline in this window, heard or not.' },
  heard: { word: 'we hear it', means: 'The chance that at least one burst is detected in this window if it is listened to as planned: sent, strong enough, and where we point and tune.' },
  band: { word: 'quantile band', means: 'Where the middle half, or nine in ten, of all that is still possible lies. It is a spread of what may be, not an error of reckoning.' },
  median: { word: 'median', means: 'Half of what is still possible lies below it, half above.' },
  error: { word: '±', means: 'The standard error of the sampling: by so much the figure would wander if the same question were simulated anew. Not knowing the spacecraft is another matter and is in the figure itself.' },
  'by-horizon': { word: 'by the horizon', means: 'The chance of at least one sound within the days ahead, if this is done here and the plan is followed elsewhere.' },
  threshold: { word: 'last hour of the plan', means: 'Hours are given to windows in the order of what they bring. This is what the last of them brings; a window that brings less is left out.' },
  hazard: { word: 'hazard', means: 'The chance that the first sound comes later than had nothing been sent, or never within the days ahead.' },
  reach: { word: 'would reach', means: 'The chance that a command sent in this window is received and carried out.' },
  prior: { word: 'prior', means: 'What was judged likely before anything was written down.' },
  posterior: { word: 'posterior', means: 'What is likely now that every entry has been counted.' },
  bit: { word: 'bit', means: 'A change of odds by two: +1 bit doubles them, −1 bit halves them.' },
  misfit: { word: 'misfit', means: 'How surprising the whole record is under all that the model knows. Very small: something is at work that the model lacks.' },
  remainder: { word: 'remainder', means: 'The share of all stories that were not simulated one by one because each is too rare.' },
  inseparable: { word: 'cannot be told apart', means: 'Causes under which every entry is equally likely. Listening moves them together; only the named means separate them.' },
  plan: { word: 'plan', means: 'The choice of windows and procedures that finds the most weight for the hours people have.' },
  horizon: { word: 'the days ahead', means: 'How far the reckoning looks. A sound after it does not count.' },
  beta: { word: 'beta', means: 'The angle of the Sun over the plane of the orbit. Near 0° every orbit has its longest shadow; beyond about 60° to 70° a low orbit has none.' },
  eclipse: { word: 'shadow', means: 'The part of an orbit in which the Earth hides the Sun from the spacecraft.' },
  soc: { word: 'state of charge', means: 'How full the battery is, as a share of its capacity now.' },
  cutoff: { word: 'cut-off', means: 'The charge below which the bus is taken off the battery.' },
  'element-set': { word: 'element set', means: 'The numbers from which an orbit is predicted, made at an epoch. The older it is, the less sure the time of a pass.' },
  eirp: { word: 'EIRP', means: 'Power an antenna seems to radiate, taken as if alike in all directions.' },
  'listen-wide': { word: 'listen wide', means: 'To watch a band of frequency wide enough for an error of tuning or of Doppler.' },
};
