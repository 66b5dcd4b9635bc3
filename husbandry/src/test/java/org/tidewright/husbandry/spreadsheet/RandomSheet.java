package org.tidewright.husbandry.spreadsheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.tidewright.testkit.Draw;

/** A keeper's log, and the ways in which it may be saved. */
final class RandomSheet {
    static final ZoneId ZONE = ZoneId.of("Europe/Paris");

    private static final String[] NOTES = {
        "",
        "",
        "",
        "fed; then tested",
        "a, b",
        "say \"half\"",
        "two\nlines",
        "Größe 25 µm",
        "=not a formula",
        "5/6/2023"
    };

    private final List<String[]> rows = new ArrayList<>();
    private final List<LocalDateTime> times = new ArrayList<>();

    /** How a sheet is saved. */
    record Style(
            Charset charset,
            boolean mark,
            char separator,
            DecimalSign decimal,
            DateOrder order,
            String dates,
            boolean timeApart,
            boolean clockOfTwelve,
            LineDelimiter lines) {

        static Style drawn(Draw draw) {
            Charset charset = draw.oneOf(
                    StandardCharsets.UTF_8,
                    StandardCharsets.UTF_16LE,
                    StandardCharsets.UTF_16BE,
                    Charset.forName("windows-1252"));
            DateOrder order = draw.oneOf(DateOrder.values());
            String dates = switch (order) {
                case DMY -> draw.oneOf("d/M/uuuu", "dd.MM.uuuu", "d-M-uu", "d MMM uuuu", "EEEE d MMMM uuuu");
                case MDY -> draw.oneOf("M/d/uuuu", "MM-dd-uuuu", "M/d/uu", "MMM d, uuuu");
                case YMD -> draw.oneOf("uuuu-MM-dd", "uuuu/M/d", "uuuu.MM.dd", "uuuuMMdd");
            };
            return new Style(
                    charset,
                    charset.name().startsWith("UTF-16")
                            || (charset.equals(StandardCharsets.UTF_8) && draw.whole(0, 1) == 0),
                    draw.oneOf(',', ';', '\t'),
                    draw.oneOf(DecimalSign.values()),
                    order,
                    dates,
                    draw.whole(0, 1) == 0,
                    draw.whole(0, 1) == 0,
                    draw.oneOf(LineDelimiter.LF, LineDelimiter.CRLF));
        }
    }

    static RandomSheet drawn(Draw draw) {
        RandomSheet sheet = new RandomSheet();
        LocalDateTime time = LocalDateTime.of(2019, 1, 1, 12, 0).plusMinutes(draw.whole(0, 1_000_000));
        for (int i = draw.whole(30, 60); i > 0; i--) {
            time = time.plusMinutes(draw.whole(300, 9000));
            // No clock shows the hour that is left out in spring.
            time = ZONE.getRules().getValidOffsets(time).isEmpty() ? time.plusHours(1) : time;
            sheet.times.add(time);
            sheet.rows.add(new String[] {
                cell(draw, draw.between(22, 29), 1),
                cell(draw, draw.between(6, 12), 2),
                cell(draw, draw.between(380, 460), 0),
                cell(draw, draw.between(1100, 1450), 0),
                cell(draw, draw.between(0.011, 0.2), 3),
                draw.oneOf(NOTES)
            });
        }
        // A row that stands twice is two readings.
        sheet.times.add(sheet.times.get(0));
        sheet.rows.add(sheet.rows.get(0));
        return sheet;
    }

    private static String cell(Draw draw, double value, int decimals) {
        return draw.whole(0, 9) == 0 ? "" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** The same with its rows in another order. */
    RandomSheet shuffled(long seed) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            places.add(i);
        }
        Collections.shuffle(places, new Random(seed));
        RandomSheet sheet = new RandomSheet();
        for (int place : places) {
            sheet.rows.add(rows.get(place));
            sheet.times.add(times.get(place));
        }
        return sheet;
    }

    /** The first rows of it, as it was some time ago. */
    RandomSheet begun(int count) {
        RandomSheet sheet = new RandomSheet();
        sheet.rows.addAll(rows.subList(0, count));
        sheet.times.addAll(times.subList(0, count));
        return sheet;
    }

    int size() {
        return rows.size();
    }

    Spreadsheet saved(Style style) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder()
                .fieldSeparator(style.separator())
                .lineDelimiter(style.lines())
                .build(text)) {
            List<String> header = new ArrayList<>(List.of("Date"));
            header.addAll(style.timeApart() ? List.of("Time") : List.of());
            header.addAll(List.of("Temp °C", "KH", "Ca (mg/L)", "Mg mg/l", "PO4 ppm", "Notes"));
            csv.writeRecord(header);
            for (int i = 0; i < rows.size(); i++) {
                csv.writeRecord(row(style, i));
            }
        }
        byte[] bytes = ((style.mark() ? "\uFEFF" : "") + text).getBytes(style.charset());
        return new Spreadsheet(() -> new ByteArrayInputStream(bytes));
    }

    private List<String> row(Style style, int i) {
        String date = DateTimeFormatter.ofPattern(style.dates(), Locale.ENGLISH).format(times.get(i));
        String time = DateTimeFormatter.ofPattern(style.clockOfTwelve() ? "h:mm a" : "HH:mm", Locale.ENGLISH)
                .format(times.get(i));
        List<String> cells = new ArrayList<>(style.timeApart() ? List.of(date, time) : List.of(date + " " + time));
        for (int column = 0; column < rows.get(i).length; column++) {
            String cell = rows.get(i)[column];
            boolean number = column < rows.get(i).length - 1;
            cells.add(number && style.decimal() == DecimalSign.COMMA ? cell.replace('.', ',') : cell);
        }
        return cells;
    }
}
