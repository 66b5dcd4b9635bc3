package org.tidewright.plan.text;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.tidewright.plan.fault.Fault;

/** Turns text into a tree of YAML nodes, refusing what a plan never needs and an attacker would. */
final class YamlTree {
    /** Plans nest about six deep. */
    private static final int DEEPEST = 24;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setLabel("plan")
            .setParseComments(true)
            .setAllowDuplicateKeys(true) // the reader reports them with their place
            .setAllowRecursiveKeys(false)
            .setMaxAliasesForCollections(0)
            .setCodePointLimit(PlanText.LARGEST_BYTES)
            .build();

    private YamlTree() {}

    /** The root mapping, or null with the reason added to the faults. */
    static @Nullable MappingNode parse(String text, List<Fault> faults) {
        try {
            Fault refused = refuse(text);
            if (refused != null) {
                faults.add(refused);
                return null;
            }
            Optional<Node> root = new Compose(SETTINGS).composeString(text);
            if (root.isEmpty() || root.get().getTag().equals(Tag.NULL)) {
                faults.add(empty());
                return null;
            }
            if (root.get() instanceof MappingNode mapping) {
                return mapping;
            }
            faults.add(new Fault(
                    1,
                    1,
                    "",
                    "text that is no list of keys",
                    "a plan: keys such as name: and display: with values",
                    ""));
            return null;
        } catch (MarkedYamlEngineException malformed) {
            faults.add(malformed(malformed));
            return null;
        } catch (YamlEngineException unreadable) {
            faults.add(new Fault(
                    1, 1, "", "text that is not YAML (" + unreadable.getMessage() + ")", "a plan in YAML 1.2", ""));
            return null;
        }
    }

    /** Looks at the flat stream of events first: it cannot be made to recurse or to multiply. */
    private static @Nullable Fault refuse(String text) {
        int depth = 0;
        int documents = 0;
        for (Event event : new Parse(SETTINGS).parseString(text)) {
            if (event instanceof AliasEvent) {
                return at(event, "a YAML alias (*name)", "values written out", "Plans do not use anchors and aliases.");
            } else if (event instanceof DocumentStartEvent && ++documents > 1) {
                return at(event, "a second document (---)", "one plan per file", "Move it to a file of its own.");
            } else if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
                return at(event, "more than " + DEEPEST + " levels of nesting", "a plan, which nests about six", "");
            } else if (event instanceof CollectionEndEvent) {
                depth--;
            }
        }
        return documents == 0 ? empty() : null;
    }

    private static Fault empty() {
        return new Fault(
                1,
                1,
                "",
                "an empty file",
                "a plan",
                "Start from an example: tidewright example harbour-room > my-system.yaml");
    }

    private static Fault at(Event event, String found, String expected, String mend) {
        Mark mark = event.getStartMark().orElseThrow();
        return new Fault(mark.getLine() + 1, mark.getColumn() + 1, "", found, expected, mend);
    }

    private static Fault malformed(MarkedYamlEngineException malformed) {
        Mark mark = malformed.getProblemMark().or(malformed::getContextMark).orElse(null);
        int line = mark == null ? 1 : mark.getLine() + 1;
        int column = mark == null ? 1 : mark.getColumn() + 1;
        return new Fault(
                line,
                column,
                "",
                "text that breaks the YAML grammar (" + malformed.getProblem() + ")",
                "key: value, with the parts of a block indented alike",
                "Look for a missing colon, a stray quote or a tab near this line.");
    }
}
