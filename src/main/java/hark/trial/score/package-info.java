/**
 * Figures from campaigns whose truth is known: enter through {@link hark.trial.score.Report}.
 *
 * <p>Pure. It knows nothing of missions or bodies, only {@link hark.trial.score.Outcome}s: what was
 * believed and what was true. Not modelled: dependence between figures of one trial.
 */
package hark.trial.score;
