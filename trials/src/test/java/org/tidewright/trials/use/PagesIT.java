package org.tidewright.trials.use;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page, on a desk and on a phone, by day and by night. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesIT {
    private static final String[] PATHS = {
        "/",
        "/water-desk",
        "/water-desk?ph=",
        "/water-desk?temperature=25&salinity=35&ph=8.2&units=us",
        "/systems/harbour-room/build",
        "/systems/harbour-room/build?show=blocked",
        "/systems/harbour-room/feed-and-export",
        "/systems/harbour-room/feed-and-export?feed_percent=60&show=phosphorus",
        "/systems/harbour-room/rehearse",
        "/systems/harbour-room/rehearse?hole=blocked&outdoor_c=35",
        "/systems/harbour-room/new-tank",
        "/systems/harbour-room/new-tank?begin=fish&seed=none&fish=99",
        "/systems/harbour-room/day",
        "/systems/harbour-room/day?window=evening&lime=none",
        "/systems/harbour-room/mixing",
        "/systems/fifty-five-gallon/mixing?task=series",
        "/systems/window-nano/mixing?task=salinity",
        "/systems/harbour-room/solutions",
        "/systems/harbour-room/solutions?ask=bottle&how=label&dose=1&of_water=100&rise=0.1",
        "/systems/harbour-room/solutions?ask=year&doses=pair",
        "/systems/harbour-room/life",
        "/systems/harbour-room/life?consider=2+royal+gramma%0Ayellow+tang+7+cm",
        "/systems/harbour-room/shop",
        "/systems/harbour-room/shop?look=tang&kind=coral&seen=coral_jelly",
        "/systems/window-nano/shop?look=achilles&units=us",
        "/systems/harbour-room/arrivals",
        "/systems/quarantine-box/arrivals?units=us",
        "/systems/harbour-room/ph",
        "/systems/window-nano/ph?ph=8.0&units=us",
        "/systems/harbour-room/quarantine",
        "/systems/quarantine-box/quarantine",
        "/systems/quarantine-box/quarantine?units=us",
        "/systems/quarantine-box/today",
        "/systems/quarantine-box/build",
        "/systems/harbour-room/plan",
        "/systems/fifty-five-gallon/build",
        "/systems/fifty-five-gallon/feed-and-export",
        "/systems/fifty-five-gallon/rehearse",
        "/systems/fifty-five-gallon/new-tank",
        "/systems/fifty-five-gallon/day?lime=none",
        "/systems/window-nano/build",
        "/systems/window-nano/new-tank?seed=none",
        "/systems/window-nano/day?lime=night",
        "/systems/window-nano/feed-and-export",
        "/systems/window-nano/rehearse"
    };

    private final Program program = Program.demo();
    private final Chromium chromium = Chromium.start();

    static Stream<Arguments> pagesOnScreens() {
        return Stream.of(PATHS).flatMap(path -> Stream.of(Screen.values()).map(screen -> Arguments.of(path, screen)));
    }

    @ParameterizedTest
    @MethodSource("pagesOnScreens")
    void opensWithoutFaultOrBarrier(String path, Screen screen) {
        try (Visit visit = chromium.visit(screen)) {
            visit.open(program.address().resolve(path));
            assertThat(visit.page().title()).as("title of %s", path).isNotBlank();
            visit.assertNothingWentWrong();
            visit.assertNothingSticksOut();
            visit.assertAccessible();
        }
    }

    @AfterAll
    void stop() {
        chromium.close();
        program.close();
    }
}
