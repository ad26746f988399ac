/**
 * Campaigns of a mission with a hidden truth, and their examination: enter through {@link
 * hark.trial.campaign.Trial}.
 *
 * <p>Truths are drawn from the mission's priors and simulated by the plain body and the plain link
 * of {@code hark.trial}; a crew listens by a plain rule; its record goes to the diagnosis that
 * users get. Only {@link hark.trial.campaign.ResultsFile} touches a disk.
 *
 * <p>Not modelled: commands, plans, outside reports, a crew that reacts to what it hears.
 */
package hark.trial.campaign;
