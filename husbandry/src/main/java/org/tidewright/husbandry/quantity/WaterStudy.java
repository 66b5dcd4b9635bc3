package org.tidewright.husbandry.quantity;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tidewright.husbandry.dosing.DoseMoves;
import org.tidewright.husbandry.estimate.Estimate;
import org.tidewright.husbandry.estimate.Estimates;
import org.tidewright.husbandry.estimate.Inputs;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;

/**
 * What is known of a system's water from its journal.
 *
 * @param now when it was worked out
 * @param quantities those that were ever read or that a probe measures, in the order of {@link WaterQuantity}
 * @param notes what could not be counted, in sentences
 */
public record WaterStudy(Instant now, List<QuantityStudy> quantities, List<String> notes) {

    /** Works it out for a system without probes. */
    public static WaterStudy of(Plan plan, List<Line> lines, Instant now, ZoneId zone) {
        return of(plan, lines, List.of(), now, zone);
    }

    /**
     * Works it out.
     *
     * @param lines that stand, in order of time
     * @param probes what they said of late; of several that measure a quantity one is counted
     * @param zone in which days are told
     */
    public static WaterStudy of(Plan plan, List<Line> lines, List<ProbeHours> probes, Instant now, ZoneId zone) {
        Map<WaterQuantity, ProbeHours> leading = new EnumMap<>(WaterQuantity.class);
        List<Line> past = new ArrayList<>();
        for (WaterQuantity quantity : WaterQuantity.values()) {
            ProbeHours.leading(probes, quantity).ifPresent(probe -> {
                leading.put(quantity, probe);
                past.addAll(ProbeReadings.of(probe, now, zone));
            });
        }
        Set<UUID> probed = past.stream().map(Line::id).collect(Collectors.toSet());
        lines.stream().filter(line -> !line.at().toInstant().isAfter(now)).forEach(past::add);
        past.sort(Comparator.comparing(line -> line.at().toInstant()));
        Inputs inputs = Inputs.of(plan, past, Span.EVER);
        Estimates estimates = Estimates.of(inputs);
        // One move of two doses at a time asks for the same past twice.
        Map<Instant, Estimates> known = new HashMap<>();
        DoseMoves.Before before =
                time -> known.computeIfAbsent(time, at -> Estimates.of(Inputs.of(plan, before(past, at), Span.EVER)));
        List<QuantityStudy> studies = new ArrayList<>();
        for (WaterQuantity quantity : WaterQuantity.values()) {
            Optional<Estimate> estimate = estimates.of(quantity);
            estimate.ifPresent(found -> studies.add(
                    new QuantityStudies(plan, past, now, zone, found, before, probed, leading.get(quantity)).study()));
        }
        return new WaterStudy(now, List.copyOf(studies), inputs.notes());
    }

    private static List<Line> before(List<Line> lines, Instant time) {
        return lines.stream()
                .filter(line -> line.at().toInstant().isBefore(time))
                .toList();
    }

    /** Whether nothing wants hands or a decision. */
    public boolean isCalm() {
        return quantities.stream()
                .noneMatch(
                        study -> study.call() == QuantityStudy.Call.HANDS || study.call() == QuantityStudy.Call.DECIDE);
    }

    /** Of a quantity; empty where it was never read. */
    public Optional<QuantityStudy> of(WaterQuantity quantity) {
        return quantities.stream().filter(study -> study.quantity() == quantity).findFirst();
    }
}
