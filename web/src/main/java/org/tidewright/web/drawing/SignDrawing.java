package org.tidewright.web.drawing;

import java.util.List;
import org.tidewright.husbandry.journal.Sign;

/**
 * A sign of illness as a small line drawing of a fish, 64 by 40 units, its head to the left. Our own; not to scale, and no
 * species.
 */
public final class SignDrawing {
    private static final String BODY = "M8 20C15 9 35 7 47 18L57 10Q53 20 57 30L47 22C35 33 15 31 8 20Z";
    private static final String TAIL_LESS = "M47 22C35 33 15 31 8 20C15 9 35 7 47 18";
    private static final String BACK_FIN = "M22 11.5C27 4 36 5 41 12.5";
    private static final String BELLY_FIN = "M27 28.6C29 33 34 34 37 27.2";
    private static final String SIDE_FIN = "M25 21Q31 20 33 25Q28 26 25 21";
    private static final String GILL = "M20 14.5Q23 20 20 26";
    private static final double EYE_X = 14;
    private static final double EYE_Y = 18;

    private final SvgWriter svg = new SvgWriter();

    private SignDrawing() {}

    /** As an SVG element that is passed over when a page is read aloud: words stand beside it. */
    public static String of(Sign sign) {
        return new SignDrawing().draw(sign);
    }

    private String draw(Sign sign) {
        svg.open("svg")
                .has("class", "sign-drawing")
                .has("viewBox", "0 0 64 40")
                .has("width", "64")
                .has("height", "40")
                .has("aria-hidden", "true");
        switch (sign) {
            case WHITE_GRAINS -> {
                fish();
                dots(1.5, 24, 14, 31, 13, 38, 16, 28, 19, 36, 23, 42, 19.5, 31, 27, 52, 16, 52.5, 24, 32, 8.5);
            }
            case DUSTY_FILM -> {
                fish();
                for (int i = 0; i < 40; i++) {
                    // Evenly strewn without a pattern: steps of the golden section.
                    double along = (i * 0.6180339887) % 1;
                    double across = (i + 0.5) / 40;
                    double half = 8.2 * Math.sin(Math.PI * (0.12 + 0.8 * along));
                    dots(0.65, 17 + 29 * along, 19.5 + half * (2 * across - 1) * 0.85);
                }
            }
            case PEELING_SLIME -> {
                fish();
                lines(List.of("M26 9.5q2-4 5-3.5t4-3", "M36 11q3-3 6-2t5-3", "M24 30q1 4 4 4.5t3 4", "M35 29q3 2 5 5"));
            }
            case FAST_BREATHING -> {
                path(BODY);
                path(BACK_FIN);
                eye(1.6);
                lines(List.of("M8 20l4 2.6", "M8 20l4-1", GILL, "M23.5 14Q27 20 23.5 27", "M27 13.6Q31 20 27 28"));
            }
            case ONE_GILL_STILL -> {
                // Seen from the front: one cover spread, the other shut.
                path("M32 5C40 7 42 33 32 36C22 33 24 7 32 5Z");
                lines(List.of("M24.6 15Q14 20 24.4 27", "M39.6 15Q40.6 20 39.7 27", "M29 25q3 2 6 0", "M32 5V1.5"));
                dots(1.4, 27.4, 15, 36.6, 15);
            }
            case SCRATCHING -> {
                svg.open("g").has("transform", "rotate(-24 32 22)");
                fish();
                svg.close();
                lines(List.of("M4 37H60", "M22 34.5l-5 1", "M25 31l-6-1"));
            }
            case CLAMPED_FINS -> {
                path("M8 20C15 9 35 7 47 18.6L59 19.4L59 20.6L47 21.4C35 33 15 31 8 20Z");
                eye(1.6);
                lines(List.of(GILL, "M22 11.6C28 9 36 9.4 42 13.4", "M25 21Q31 21.4 36 22", "M28 28.8Q33 29 39 26"));
            }
            case CLOUDY_EYE -> {
                fishWithoutEye();
                svg.open("circle").has("cx", 15).has("cy", 17.5).has("r", 4.2).close();
                lines(List.of("M12.4 19.6l4.6-4.8", "M14 21l4.4-4.6", "M11.6 17.4l3-3.2"));
            }
            case FRAYED_FINS -> {
                path(TAIL_LESS);
                path("M47 18L58 9l-2.4 4 3 .6-3.4 2.6 3 1.4-4 2.2 3.6 1.6-3.6 1.6 3.4 2.8-3.2 1 2.4 3.6L47 22");
                path("M22 11.5l3.6-5 .8 3 3-4.4 1 3.6 3-3.8 1 4 3.4-2-.2 4 3.4 1.6");
                path(SIDE_FIN);
                eye(1.6);
                lines(List.of(GILL));
            }
            case SORES -> {
                fish();
                svg.open("path")
                        .has("class", "sign-spot")
                        .has("d", "M33 14q4-2 6 1t-2 4-6-1 2-4zM38 23q3-1 4 1t-3 3-1-4z")
                        .close();
            }
            case PALE_STRINGY_DROPPINGS -> {
                fish();
                lines(List.of("M36 27.8c1 3-2 4-1 6.4s4 1 4 3.4"));
            }
            case SWOLLEN_BELLY -> {
                path("M8 20C15 9 35 9 47 18L57 10Q53 20 57 30L47 22C44 38 16 40 8 20Z");
                path(BACK_FIN);
                eye(1.6);
                lines(List.of(GILL, "M24 30q8 5 16-1"));
            }
            case THIN_BEHIND_THE_HEAD -> {
                path(
                        "M8 20C11 11 19 10 22 13.5C26 18 36 15 47 18.6L57 11Q53 20 57 29L47 21.4C37 23.6 29 21.6 23 25C17 30 11 27 8 20Z");
                eye(2);
                lines(List.of(GILL, "M27 18.6h3M32 18.6h3M37 19h3"));
            }
            case HIDING -> {
                // No more than a head that looks out of a pipe.
                path("M27 13C19 12 12 15 8 20C12 26 19 28.6 27 27.4");
                eye(1.6);
                lines(List.of(
                        "M27 7H61V33H27",
                        "M27 7C22.6 7 22.6 33 27 33C31.4 33 31.4 7 27 7",
                        "M20.4 15.4Q23 20 20.4 25.6"));
            }
            case HANGING_AT_THE_SURFACE -> {
                lines(List.of("M2 6.5q5 2.4 10 0t10 0 10 0 10 0 10 0 10 0"));
                svg.open("g").has("transform", "rotate(58 30 24) translate(-1 4) scale(.9)");
                fish();
                svg.close();
            }
            case SPINNING -> {
                svg.open("g").has("transform", "rotate(-70 32 20) translate(6.5 4) scale(.8)");
                fish();
                svg.close();
                lines(List.of(
                        "M14 12A20 17 0 0 0 18 33",
                        "M18 33l-5.4-1M18 33l-.4-5.2",
                        "M50 28A20 17 0 0 0 46 7",
                        "M46 7l5.4 1M46 7l.4 5.2"));
            }
            case SOMETHING_ELSE -> {
                path(BODY);
                path(BACK_FIN);
                eye(1.6);
                lines(List.of("M28 17q0-4 4-4t4 3.6q0 2.4-4 4.4v2.2"));
                dots(0.9, 32, 26);
            }
        }
        return svg.close().finished();
    }

    private void fish() {
        fishWithoutEye();
        eye(1.6);
    }

    private void fishWithoutEye() {
        path(BODY);
        path(BACK_FIN);
        path(BELLY_FIN);
        path(SIDE_FIN);
        lines(List.of(GILL));
    }

    private void eye(double radius) {
        dots(radius, EYE_X, EYE_Y);
    }

    private void path(String shape) {
        svg.open("path").has("d", shape).close();
    }

    private void lines(List<String> shapes) {
        svg.open("path")
                .has("class", "sign-fine")
                .has("d", String.join("", shapes))
                .close();
    }

    /** Filled, at pairs of x and y. */
    private void dots(double radius, double... places) {
        for (int i = 0; i < places.length; i += 2) {
            svg.open("circle")
                    .has("class", "sign-spot")
                    .has("cx", places[i])
                    .has("cy", places[i + 1])
                    .has("r", radius)
                    .close();
        }
    }
}
