package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.spreadsheet.Finding;
import org.tidewright.husbandry.spreadsheet.Mapping;
import org.tidewright.husbandry.spreadsheet.Measured;
import org.tidewright.husbandry.spreadsheet.Named;
import org.tidewright.husbandry.spreadsheet.Proposal;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;

/**
 * A keeper's spreadsheet, on its way into the log.
 *
 * @param lead what to do, or what came of the last step
 * @param fault why a file is no sheet; empty for nothing
 * @param done address of the log where the sheet's last line is; null while nothing was kept
 * @param sheet what is looked at; null where a file is to be chosen
 */
public record ImportPage(
        String href,
        String logHref,
        String token,
        String lead,
        String fault,
        @Nullable String done,
        @Nullable Sheet sheet) {

    /**
     * The sheet with what it is taken for.
     *
     * @param parcel its bytes as a text, which goes with the form
     * @param shown which choices the preview belongs to, so that nothing else is kept
     */
    public record Sheet(
            String name,
            String parcel,
            String shown,
            String about,
            List<Select> general,
            Field timeOfDay,
            boolean carried,
            boolean leaveOut,
            boolean leaveOutAsked,
            String columnsFault,
            List<Column> columns,
            List<String> questions,
            @Nullable ImportPreview preview,
            boolean keepable) {}

    /** A field that is typed. */
    public record Field(String name, String label, String value, String fault) {}

    /**
     * A column, or the name of what stands beside it.
     *
     * @param cells the first ones, as they stand
     * @param taken what it was taken for, with the reason
     * @param open whether the keeper has yet to say
     * @param method null where no reading comes of it
     */
    public record Column(
            String title,
            String cells,
            String taken,
            boolean open,
            Select what,
            @Nullable Select method,
            @Nullable Select kept,
            @Nullable Field place) {
        public boolean placeIsWrong() {
            return place != null && !place.fault().isEmpty();
        }
    }

    private static final int CELLS = 4;
    private static final int LONGEST_CELL = 24;

    static Sheet sheet(
            String name,
            String parcel,
            String shown,
            Proposal proposal,
            List<List<String>> rows,
            List<String> tanks,
            ImportForm form,
            @Nullable ImportPreview preview,
            @Nullable Taking taking) {
        Mapping mapping = proposal.mapping();
        boolean bad = preview != null && preview.badCount() > 0;
        // Those about probes are known only once their values were counted.
        List<String> questions = taking instanceof Taking.Refused refused
                ? refused.questions()
                : form.mapping().questions();
        return new Sheet(
                name,
                parcel,
                shown,
                about(proposal),
                general(proposal, tanks, form),
                new Field(
                        "time_of_day",
                        "Time of day where none stands",
                        form.value("time_of_day"),
                        form.fault("time_of_day")),
                form.value("carried").equals("yes"),
                form.value("leave_out").equals("yes"),
                bad || form.value("leave_out").equals("yes"),
                form.fault("columns"),
                mapping.named() == null ? columns(proposal, rows, form) : names(proposal, mapping.named(), form),
                questions,
                preview,
                preview != null && form.isSound() && taking instanceof Taking.Taken);
    }

    private static String about(Proposal proposal) {
        Mapping mapping = proposal.mapping();
        String separator = switch (mapping.layout().separator()) {
            case ';' -> "semicolons";
            case '\t' -> "tabs";
            default -> "commas";
        };
        String header = mapping.layout().hasHeader()
                ? "the header in line " + mapping.layout().headerLine() + ", the first row in line "
                        + mapping.layout().dataLine()
                : "no header, the first row in line " + mapping.layout().dataLine();
        Named named = mapping.named();
        String names = named == null
                ? ""
                : " One value stands in each row: names in column " + named.nameColumn() + ", values in column "
                        + named.valueColumn()
                        + (named.unitColumn() == null ? "" : ", units in column " + named.unitColumn()) + ".";
        int most = proposal.labels().keySet().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
        String wide = most > ImportDefaults.MOST_COLUMNS
                ? " Only the first " + ImportDefaults.MOST_COLUMNS + " of its columns are looked at here."
                : "";
        return "Read as " + mapping.layout().charset().name() + ", cells set apart by " + separator + ", " + header
                + "."
                + names + wide + " Times without an offset are on the clock of "
                + mapping.times().zone().getId() + ".";
    }

    private static List<Select> general(Proposal proposal, List<String> tanks, ImportForm form) {
        List<Select> general = new ArrayList<>();
        general.add(Select.of(
                "order",
                "Day, month and year stand as",
                form.value("order"),
                asked(form, "order", proposal.about("date-order")),
                with(
                        form.value("order"),
                        "dmy",
                        "day, month, year",
                        "mdy",
                        "month, day, year",
                        "ymd",
                        "year, month, day")));
        general.add(Select.of(
                "decimal",
                "Numbers have a decimal",
                form.value("decimal"),
                asked(form, "decimal", proposal.about("decimal")),
                with(form.value("decimal"), "point", "point: 8.1", "comma", "comma: 8,1")));
        if (!tanks.isEmpty()) {
            List<String> pairs = new ArrayList<>(List.of("all", "all rows"));
            tanks.forEach(tank -> pairs.addAll(List.of("is " + tank, "only “" + tank + "”")));
            general.add(Select.of(
                    "rows",
                    "Rows of this system",
                    form.value("rows"),
                    asked(form, "rows", proposal.about("rows")),
                    with(form.value("rows"), pairs.toArray(String[]::new))));
        }
        return general;
    }

    /** What is asked about a choice that is still open. */
    private static String asked(ImportForm form, String name, Optional<Finding> finding) {
        if (!form.value(name).isEmpty()) {
            return form.fault(name);
        }
        return "To be answered: " + finding.map(Finding::reason).orElse("nothing in the sheet tells") + ".";
    }

    /** With a choice of nothing first, as long as nothing is chosen. */
    private static List<String> with(String chosen, String... pairs) {
        List<String> all = new ArrayList<>(chosen.isEmpty() ? List.of("", "please choose") : List.of());
        all.addAll(List.of(pairs));
        return all;
    }

    private static List<Column> columns(Proposal proposal, List<List<String>> rows, ImportForm form) {
        List<Column> columns = new ArrayList<>();
        for (int column : ImportDefaults.columns(proposal)) {
            String label = proposal.labels().getOrDefault(column, "");
            String title = "Column " + column + (label.isEmpty() ? "" : " “" + label + "”");
            Measured guess = proposal.mapping().columns().get(column);
            columns.add(column(
                    title, cells(rows, column), "column_" + column, guess, proposal.ofColumn(column), true, form));
        }
        return columns;
    }

    private static List<Column> names(Proposal proposal, Named named, ImportForm form) {
        List<Column> columns = new ArrayList<>();
        int i = 0;
        for (String name : named.names().keySet()) {
            Measured guess = named.names().getOrDefault(name, Optional.empty()).orElse(null);
            columns.add(column("“" + name + "”", "", "name_" + i, guess, proposal.ofName(name), false, form));
            i++;
        }
        return columns;
    }

    private static String cells(List<List<String>> rows, int column) {
        List<String> cells = new ArrayList<>();
        for (List<String> row : rows) {
            String cell = row.size() < column ? "" : row.get(column - 1).replaceAll("\\s+", " ");
            if (!cell.isEmpty() && cells.size() < CELLS) {
                cells.add(cell.length() > LONGEST_CELL ? cell.substring(0, LONGEST_CELL - 1) + "…" : cell);
            }
        }
        return String.join("  ·  ", cells);
    }

    private static Column column(
            String title,
            String cells,
            String field,
            @Nullable Measured guess,
            Optional<Finding> finding,
            boolean parts,
            ImportForm form) {
        String chosen = form.value(field);
        boolean open = chosen.isEmpty();
        Measured measured = ImportDefaults.measured(chosen).orElse(null);
        return new Column(
                title,
                cells,
                taken(guess, finding, chosen),
                open,
                what(field, chosen, guess, parts, form),
                measured == null ? null : method(field, measured, form),
                measured == null ? null : kept(field, form),
                measured == null
                        ? null
                        : new Field(
                                "place_" + field,
                                "Where, if by a probe",
                                form.value("place_" + field),
                                form.fault("place_" + field)));
    }

    private static String taken(@Nullable Measured guess, Optional<Finding> finding, String chosen) {
        if (chosen.equals(ImportForm.REMARK) && finding.isEmpty()) {
            return "Taken for your notes: they go with the first reading of their row, or stand by themselves.";
        }
        String reason = finding.map(Finding::reason).orElse("it has a header and no cells");
        if (chosen.isEmpty() && guess != null) {
            return "To be answered: is it " + words(guess) + "? It is taken so because " + reason + ".";
        }
        String words = finding.map(Finding::words).orElse("left out");
        return "Taken for " + (words.equals("left out") ? "nothing to keep" : words) + ": " + reason + ".";
    }

    private static String words(Measured measured) {
        return measured.quantity().words() + " in " + ImportDefaults.name(measured.unit());
    }

    private static Select what(String field, String chosen, @Nullable Measured guess, boolean parts, ImportForm form) {
        List<String> first = new ArrayList<>();
        if (chosen.isEmpty()) {
            first.addAll(List.of("", "please choose"));
        }
        if (guess != null && !guess.sure()) {
            first.addAll(List.of(ImportForm.value(guess), words(guess) + ", as guessed"));
        }
        first.addAll(List.of(ImportForm.LEFT_OUT, "nothing: left out"));
        if (parts) {
            first.addAll(List.of(
                    ImportForm.DATE, "the date", ImportForm.TIME, "the time of day", ImportForm.REMARK, "your notes"));
        }
        List<Select.Group> groups = new ArrayList<>();
        groups.add(Select.group("", chosen, first));
        boolean already = first.contains(chosen);
        groups.addAll(ImportDefaults.quantities(already ? "" : chosen));
        return new Select(field, "It holds", groups, form.fault(field));
    }

    private static Select method(String field, Measured measured, ImportForm form) {
        List<String> pairs = new ArrayList<>(List.of("", "not said"));
        for (TestMethod method : TestMethods.of(measured.quantity())) {
            pairs.addAll(List.of(method.key(), method.name()));
        }
        String name = "method_" + field;
        return Select.of(name, "Measured by", form.value(name), form.fault(name), pairs);
    }

    private static Select kept(String field, ImportForm form) {
        String name = "kept_" + field;
        return Select.of(
                name,
                "Kept as",
                form.value(name),
                "",
                List.of(
                        "by_pace",
                        "readings, or a probe’s values where they come faster than by hand",
                        "readings",
                        "readings",
                        "probe",
                        "values of a probe"));
    }
}
