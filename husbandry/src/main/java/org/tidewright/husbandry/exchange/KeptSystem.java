package org.tidewright.husbandry.exchange;

import org.tidewright.husbandry.journal.Journal;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.ProbeLog;

/**
 * Where everything is kept that was written of one system.
 *
 * @param name the system, as the ports know it
 */
public record KeptSystem(String name, Journal journal, ProbeLog probes, Photos photos) {}
