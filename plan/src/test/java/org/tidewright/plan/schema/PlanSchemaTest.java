package org.tidewright.plan.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;

/** The published schema agrees with the reader, as judged by an independent validator. */
class PlanSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(PlanSchema.text());

    @Test
    void acceptsEveryExample() {
        for (String name : Examples.NAMES) {
            assertThat(SCHEMA.validate(Examples.text(name), InputFormat.YAML))
                    .as(name)
                    .isEmpty();
        }
    }

    @Test
    void acceptsTimesWithoutTheirQuotes() {
        String bare = Examples.text("harbour-room").replaceAll("\"(\\d\\d:\\d\\d)\"", "$1");
        assertThat(bare).contains("times: [08:30, 18:30]");
        assertThat(SCHEMA.validate(bare, InputFormat.YAML)).isEmpty();
    }

    @Test
    void refusesWhatTheReaderRefuses() {
        String nano = Examples.text("window-nano");
        for (String damaged : List.of(
                nano.replace("length: 60 cm", "length: 60"),
                nano.replace("length: 60 cm", "length: 60 L"),
                nano.replace("length: 60 cm", "lenght: 60 cm"),
                nano.replace("cover: open", "cover: opne"),
                nano.replace("count: 2", "count: two"),
                nano.replace("starts: \"12:00\"", "starts: \"24:00\""),
                nano.replace("[\"19:00\"]", "[\"7 pm\"]"),
                nano.replace("nitrate: 12 mg/L", "nitrate: 12 dKH"),
                nano.replace("units: metric", ""))) {
            assertThat(damaged).isNotEqualTo(nano);
            assertThat(SCHEMA.validate(damaged, InputFormat.YAML)).as(damaged).isNotEmpty();
        }
    }
}
