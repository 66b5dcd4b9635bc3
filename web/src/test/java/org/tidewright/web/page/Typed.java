package org.tidewright.web.page;

import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.UnitSystem;

/** The form and page of a query to the water desk. */
final class Typed {
    private Typed() {}

    static WaterForm form(Map<String, String> query) {
        return form(query, UnitSystem.METRIC);
    }

    static WaterForm form(Map<String, String> query, UnitSystem units) {
        return WaterForm.read(query::get, units);
    }

    static WaterDeskPage page(Map<String, String> query) {
        return WaterDeskPage.of(form(query), UnitSystem.METRIC);
    }

    static WaterForm.Field field(WaterForm form, String name) {
        for (var fields : List.of(form.first(), form.settling(), form.more())) {
            for (WaterForm.Field field : fields) {
                if (field.name().equals(name)) {
                    return field;
                }
            }
        }
        throw new AssertionError("no field " + name);
    }

    static String unit(WaterForm form, String name) {
        return field(form, name).units().stream()
                .filter(WaterForm.Unit::chosen)
                .findFirst()
                .orElseThrow()
                .name();
    }
}
