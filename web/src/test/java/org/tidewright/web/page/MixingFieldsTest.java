package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.mixing.Given;
import org.tidewright.husbandry.mixing.Origin;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.web.page.MixingFields.Range;
import org.tidewright.web.page.MixingFields.Value;

class MixingFieldsTest {
    private static final Given LOG = new Given(0.04512, 0.0014, new Origin(Basis.YOUR_LOG, "6 March"));
    private static final Given PLAN = new Given(0.045, 0, new Origin(Basis.YOUR_PLAN, ""));
    private static final Range SOME = new Range(0.001, 1, "");

    /** One field of a volume, read. */
    private record Read(MixingFields fields, Value value, MixingItem.Cell cell, String unit) {}

    private static Read read(Map<String, String> query, UnitSystem units, @Nullable Given given) {
        MixingFields fields = new MixingFields(query::get, units);
        fields.group("The change");
        Value value = fields.needed("volume", "Water to change", FieldUnits.VOLUME, given, SOME);
        MixingItem.Row row = (MixingItem.Row) fields.groups().get(0).items().get(0);
        String unit = row.units().stream()
                .filter(MixingItem.Unit::chosen)
                .map(MixingItem.Unit::name)
                .findFirst()
                .orElseThrow();
        return new Read(fields, value, row.cells().get(0), unit);
    }

    @Test
    void aFieldBeginsWithWhatIsKnownAndSaysWhereItIsFrom() {
        Read read = read(Map.of(), UnitSystem.METRIC, LOG);
        // 45.12 ± 1.4: two digits of a doubt that begins with 1.
        assertThat(read.cell().text()).isEqualTo("45.1");
        assertThat(read.cell().note()).isEqualTo("From your log, 6 March, ±\u00a01.");
        assertThat(read.value().error()).isEqualTo(0.0014);
        assertThat(read(Map.of(), UnitSystem.METRIC, PLAN).cell().note()).isEqualTo("From your plan.");
    }

    /** 45 L are 11.89 gal. */
    @Test
    void aUsReaderHasGallons() {
        Read read = read(Map.of(), UnitSystem.US, PLAN);
        assertThat(read.cell().text()).isEqualTo("11.89");
        assertThat(read.unit()).isEqualTo("gal");
        assertThat(read.value().orNone()).isCloseTo(0.045, within(1e-5));
    }

    @Test
    void theFormSentUnchangedIsStillFromThePlanWhoeverReadsIt() {
        Map<String, String> sent = Map.of("volume", "45", "volume_unit", "L");
        for (UnitSystem units : UnitSystem.values()) {
            Read read = read(sent, units, PLAN);
            assertThat(read.cell().note()).isEqualTo("From your plan.");
            assertThat(read.unit()).isEqualTo("L");
        }
    }

    @Test
    void whatIsTypedOverItIsSaidBesideWhatWasKnownAndHasNoDoubt() {
        Read read = read(Map.of("volume", "60", "volume_unit", "L"), UnitSystem.METRIC, LOG);
        assertThat(read.cell().note()).isEqualTo("Typed. From your log: 45.12\u00a0L, ±\u00a01, 6 March.");
        assertThat(read.value().error()).isZero();
    }

    @Test
    void aUnitBehindTheNumberCounts() {
        Read read = read(Map.of("volume", "10 gallons", "volume_unit", "L"), UnitSystem.METRIC, null);
        assertThat(read.value().orNone()).isCloseTo(0.03785, within(1e-5));
        assertThat(read.unit()).isEqualTo("gal");
        assertThat(read(Map.of("volume", "45,5"), UnitSystem.METRIC, null)
                        .value()
                        .orNone())
                .isCloseTo(0.0455, within(1e-12));
    }

    @Test
    void whatNobodyKnowsIsAskedForAndOnlyAnEmptiedFieldIsAFault() {
        Read open = read(Map.of(), UnitSystem.METRIC, null);
        assertThat(open.fields().faults()).isZero();
        assertThat(open.fields().isSound()).isFalse();
        assertThat(open.fields().wanting()).containsExactly("water to change");
        Read emptied = read(Map.of("volume", ""), UnitSystem.METRIC, PLAN);
        assertThat(emptied.cell().fault()).startsWith("Needed");
        assertThat(emptied.fields().faults()).isOne();
    }

    @Test
    void aFaultSaysWhatWasFoundAndWhatIsExpected() {
        assertThat(read(Map.of("volume", "much"), UnitSystem.METRIC, PLAN)
                        .cell()
                        .fault())
                .isEqualTo("Found “much”; expected is a number such as 45 in L, gal, mL.");
        assertThat(read(Map.of("volume", "4500"), UnitSystem.METRIC, PLAN)
                        .cell()
                        .fault())
                .isEqualTo("Found 4500\u00a0L; expected is 1 to 1000\u00a0L. Is the unit right?");
    }

    /** No water is 35 times as dense as pure water. */
    @Test
    void aSalinityTypedAsASpecificGravityIsMarked() {
        MixingFields fields = new MixingFields(Map.of("now", "35", "now_unit", "SG 25/25")::get, UnitSystem.METRIC);
        fields.group("Salinity");
        Value value = fields.needed("now", "Now", FieldUnits.of(WaterQuantity.SALINITY), null, new Range(1, 60, ""));
        assertThat(value.value()).isEmpty();
        assertThat(fields.faults()).isOne();
    }

    @Test
    void anEmptiedWaterIsUnknown() {
        MixingFields fields = new MixingFields(Map.of("new_calcium", "")::get, UnitSystem.METRIC);
        fields.foldedGroup("More");
        Given calcium = new Given(0.42, 0, new Origin(Basis.YOUR_PLAN, ""));
        List<Value> both = fields.pair(
                "calcium",
                "Calcium",
                FieldUnits.of(WaterQuantity.CALCIUM),
                List.of("system_calcium", "new_calcium"),
                List.of("System", "New water"),
                List.of(calcium, calcium),
                List.of(new Range(0, 2, ""), new Range(0, 2, "")),
                false);
        fields.fold();
        assertThat(both.get(0).value()).hasValue(0.42);
        assertThat(both.get(1).value()).isEmpty();
        assertThat(fields.isSound()).isTrue();
        assertThat(fields.groups().get(0).open()).isFalse();
    }
}
