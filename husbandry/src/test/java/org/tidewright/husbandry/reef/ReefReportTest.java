package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.CoralForm;

class ReefReportTest {
    private final Plan plan = TestPlans.example("harbour-room");
    private final ReefSite site = new ReefSite(plan, CoralLore.BY_FORM);
    private final Growth growth = Growth.asStated(plan, CoralLore.BY_FORM, 0.495);
    private final Colony plate = new Colony("new plate", 1, 0.04, FormTraits.of(CoralForm.PLATING_MONTIPORA), null);

    private ReefReport report(ReefReport.Trial trial) {
        return ReefReport.of(site, growth, 0.495, trial);
    }

    @Test
    void everyLetterThatIsUsedIsInTheOneListOfSources() {
        ReefReport report = report(new ReefReport.Trial(plate, new Place(0.3, 0.3, 0.3)));
        Set<String> used = new TreeSet<>();
        List<Sentence> sentences = new ArrayList<>(
                List.of(report.placing().lead(), report.growing().lead()));
        report.corals().forEach(told -> sentences.addAll(List.of(told.light(), told.flow(), told.neighbours())));
        sentences.addAll(report.growing().remarks());
        sentences.add(requireNonNull(report.trial()).lead());
        sentences.addAll(requireNonNull(report.trial()).remarks());
        sentences.stream().flatMap(sentence -> sentence.parts().stream()).forEach(part -> {
            if (part instanceof Sentence.Part.Sounding figure
                    && !figure.source().isEmpty()) {
                used.add(figure.source());
            }
        });
        assertThat(report.sources()).extracting(Source::key).containsAll(used).hasSizeGreaterThan(4);
    }

    @Test
    void withoutATrialNothingIsTried() {
        ReefReport report = ReefReport.of(site, growth, 0.495, null);
        assertThat(report.trial()).isNull();
        assertThat(report.tried()).isNull();
        assertThat(report.suggested()).isEmpty();
        assertThat(report.corals()).hasSize(8);
        assertThat(report.demand()).hasSize(6);
    }

    @Test
    void whereACoralCouldStandIsToldWithoutAPlace() {
        ReefReport report = report(new ReefReport.Trial(plate, null));
        assertThat(requireNonNull(report.trial()).lead().text(UnitSystem.METRIC))
                .startsWith("Look whether rock or sand is there");
        assertThat(report.suggested()).hasSize(3);
        Colony giant = new Colony("giant torch", 1, 0.25, FormTraits.of(CoralForm.EUPHYLLIA), null);
        ReefReport none = report(new ReefReport.Trial(giant, null));
        assertThat(requireNonNull(none.trial()).lead().text(UnitSystem.METRIC))
                .startsWith("Do not buy it for this tank yet");
    }

    @Test
    void aGoodPlaceNeedsNoOthers() {
        Place good =
                report(new ReefReport.Trial(plate, null)).suggested().get(0).place();
        ReefReport report = report(new ReefReport.Trial(plate, good));
        assertThat(report.suggested()).isEmpty();
        assertThat(requireNonNull(report.trial()).lead().text(UnitSystem.METRIC))
                .startsWith("Put it there");
        assertThat(requireNonNull(report.tried()).isGood()).isTrue();
    }
}
