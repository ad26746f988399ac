package hark.trial.follow;

import hark.plan.Procedure;
import hark.trial.campaign.Listener;

/** What is done in a window. */
record Choice(Procedure procedure, Listener.Manner manner) {}
