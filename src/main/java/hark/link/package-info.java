/**
 * From a radiated burst to the chance that somebody hears it, and from a sent command to the chance
 * that it is accepted.
 *
 * <p>Entry types: {@link hark.link.LinkBudget} for levels, {@link hark.link.Detection} and {@link
 * hark.link.Detector} for what is made of them. Everything here is pure: numbers in, numbers out,
 * no state, nothing allocated in the methods that take and give {@code double}.
 *
 * <p>Not modelled: rain and cloud (negligible below 3 GHz), ionospheric scintillation as a process
 * in time, multipath from the ground, side lobes of antennas (a floor stands for them), adjacent
 * channels, intermodulation. Detection is judged burst by burst; a search that adds several bursts
 * up before it decides does better than is said here.
 */
package hark.link;
