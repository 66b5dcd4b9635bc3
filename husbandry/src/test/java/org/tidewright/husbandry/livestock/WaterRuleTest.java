package org.tidewright.husbandry.livestock;

import static java.lang.Double.POSITIVE_INFINITY;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.burden.HandMadeBurden;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Outlook.Range;

/** What burdens made by hand say of an animal; today is 1 November 2026. */
class WaterRuleTest {
    private final HandMadeBurden made = new HandMadeBurden();

    private List<Finding> findings() {
        Setting setting = SettingsByHand.setting(List.of(), new Experience(List.of(), List.of()), null, null);
        return SettingsByHand.judge(
                new WaterRule(), SettingsByHand.animals("Gramma loreto", 1), setting, made.burden());
    }

    private Finding finding(String rule) {
        return findings().stream()
                .filter(each -> each.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private String becomes(String rule) {
        return Objects.requireNonNull(finding(rule).becomes()).text(UnitSystem.METRIC);
    }

    @Test
    void calmWaterWithAirEnoughHolds() {
        assertThat(findings()).extracting(Finding::call).containsOnly(Call.YES);
        assertThat(findings()).extracting(Finding::rule).containsExactly("ammonia", "oxygen");
        assertThat(finding("ammonia").sources()).hasSize(2);
    }

    @Test
    void whereTheTwinWasNotAskedItSaysNothing() {
        Setting setting = SettingsByHand.setting(List.of(), new Experience(List.of(), List.of()), null, null);
        assertThat(SettingsByHand.judge(new WaterRule(), SettingsByHand.animals("Gramma loreto", 1), setting, null))
                .isEmpty();
    }

    @Test
    void bacteriaThatCatchUpAreGivenADate() {
        made.calm = new Range(0, 7, 21);
        assertThat(finding("ammonia").call()).isEqualTo(Call.NOT_YET);
        assertThat(becomes("ammonia")).isEqualTo("Add it after 22 November.");
        made.calm = new Range(0, 14, POSITIVE_INFINITY);
        assertThat(becomes("ammonia"))
                .isEqualTo("Add it after 15 November, once tests show neither ammonia nor nitrite.");
    }

    @Test
    void theYearIsSaidOfADateInTheNext() {
        made.calm = HandMadeBurden.all(63);
        assertThat(becomes("ammonia")).isEqualTo("Add it after 3 January 2027.");
    }

    @Test
    void whereSomeDrawsAreNeverCalmTestsAreToBeMadeAndOneOfThirteenIsLetPass() {
        made.calm = new Range(0, 0, POSITIVE_INFINITY);
        made.calmToday = 12 / 13.0;
        assertThat(finding("ammonia").call()).isEqualTo(Call.YES);
        made.calmToday = 11 / 13.0;
        assertThat(finding("ammonia").call()).isEqualTo(Call.MIND);
        assertThat(finding("ammonia").what().text(UnitSystem.METRIC)).startsWith("Test ammonia and nitrite");
    }

    @Test
    void whatWaitingCannotHelpIsTooMuchAtOnce() {
        made.calm = HandMadeBurden.all(POSITIVE_INFINITY);
        assertThat(finding("ammonia").call()).isEqualTo(Call.NOT_YET);
        assertThat(becomes("ammonia")).startsWith("Take fewer or smaller ones");
        made.restless = 0.6;
        assertThat(becomes("ammonia")).startsWith("Wait until tests have shown neither");
    }

    @Test
    void nitrateThatSurelyLeavesItsRangeForItsFoodWaitsAndWhatOnlyGrownOnesLiftIsMinded() {
        made.nitrate = 18;
        assertThat(finding("nutrients").call()).isEqualTo(Call.NOT_YET);
        assertThat(becomes("nutrients")).startsWith("Take out more nitrate first");
        made.nitrate = 8;
        made.grownNitrate = 18;
        assertThat(finding("nutrients").call()).isEqualTo(Call.MIND);
        assertThat(finding("nutrients").what().text(UnitSystem.METRIC)).startsWith("Grown, its food lifts nitrate");
    }

    @Test
    void airThatRunsShortAtNightWaitsAndWhatIsShortOnlyGrownIsMinded() {
        made.saturation = 58;
        assertThat(finding("oxygen").call()).isEqualTo(Call.NOT_YET);
        made.saturation = 90;
        made.grownSaturation = 55;
        assertThat(finding("oxygen").what().text(UnitSystem.METRIC)).startsWith("More air over the water");
        made.grownSaturation = 70;
        assertThat(finding("oxygen").what().text(UnitSystem.METRIC)).startsWith("Watch its breath");
    }

    @Test
    void halfAnHourLessInAPowerCutIsMinded() {
        made.hours = 7.6;
        assertThat(findings()).noneMatch(each -> each.rule().equals("outage"));
        made.hours = 7.4;
        assertThat(finding("outage").call()).isEqualTo(Call.MIND);
        assertThat(finding("outage").why().text(UnitSystem.METRIC)).contains("where you must act, after");
    }
}
