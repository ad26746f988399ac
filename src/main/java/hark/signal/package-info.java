/**
 * What a received signal says: whose Doppler curve it is and how late that object runs.
 *
 * <p>Begin with {@link hark.signal.Whose}: it takes a {@link hark.signal.WhoseQuestion} and gives a
 * {@link hark.signal.WhoseAnswer}. Curves are read by {@link hark.signal.CurveFiles}. Everything
 * here is pure.
 *
 * <p>Not modelled: refraction, the second-order Doppler shift (under 0.3 Hz at 437 MHz), a carrier
 * that jumps within a pass.
 */
package hark.signal;
