package org.tidewright.plan.text;

import java.lang.reflect.RecordComponent;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Present;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.tidewright.plan.quantity.Amount;

/** Writes records as YAML, taking comments and layout from an earlier tree where the same keys stand in it. */
final class RecordWriter {
    /** Flat blocks up to this many characters go on one line in braces. */
    private static final int SHORT_BLOCK = 70;

    private static final DumpSettings SETTINGS = DumpSettings.builder()
            .setDumpComments(true)
            .setIndent(2)
            .setIndicatorIndent(2)
            .setIndentWithIndicator(true)
            .setWidth(120)
            .setSplitLines(false)
            .setDefaultScalarStyle(ScalarStyle.PLAIN)
            .build();

    private RecordWriter() {}

    static String write(Record record, @Nullable MappingNode earlier) {
        Node tree = block(record, earlier);
        return new Present(SETTINGS)
                .emitToString(new Serialize(SETTINGS).serializeOne(tree).iterator());
    }

    private static Node block(Record record, @Nullable Node earlier) {
        List<NodeTuple> tuples = new ArrayList<>();
        boolean flat = true;
        int width = 0;
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = read(component, record);
            if (value == null || isEmpty(value)) {
                continue;
            }
            String key = Keys.ofComponent(component.getName());
            NodeTuple before = tuple(earlier, key);
            Node keyNode = withComments(scalar(key), before == null ? null : before.getKeyNode());
            Node valueNode = node(value, before == null ? null : before.getValueNode());
            tuples.add(new NodeTuple(keyNode, valueNode));
            flat &= valueNode instanceof ScalarNode;
            width += key.length() + value.toString().length() + 4;
        }
        return withComments(mapping(tuples, flat && width <= SHORT_BLOCK, earlier), earlier);
    }

    private static Node node(Object value, @Nullable Node earlier) {
        if (value instanceof Record record && !(value instanceof Amount)) {
            return block(record, earlier);
        } else if (value instanceof List<?> list) {
            List<Node> items = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                items.add(node(list.get(i), item(earlier, i)));
            }
            boolean flat = items.stream().allMatch(ScalarNode.class::isInstance);
            FlowStyle style = earlier instanceof SequenceNode before
                    ? before.getFlowStyle()
                    : flat ? FlowStyle.FLOW : FlowStyle.BLOCK;
            return withComments(new SequenceNode(Tag.SEQ, items, style), earlier);
        } else if (value instanceof Map<?, ?> counts) {
            List<NodeTuple> tuples = new ArrayList<>();
            counts.forEach((kind, count) ->
                    tuples.add(new NodeTuple(scalar(Keys.ofChoice((Enum<?>) kind)), scalar(count.toString()))));
            return withComments(mapping(tuples, true, earlier), earlier);
        }
        if (value instanceof LocalTime time) {
            return withComments(quoted(TimeText.write(time)), earlier);
        }
        return withComments(
                scalar(value instanceof Enum<?> choice ? Keys.ofChoice(choice) : value.toString()), earlier);
    }

    private static MappingNode mapping(List<NodeTuple> tuples, boolean onOneLine, @Nullable Node earlier) {
        FlowStyle style = earlier instanceof MappingNode before
                ? before.getFlowStyle()
                : onOneLine ? FlowStyle.FLOW : FlowStyle.BLOCK;
        return new MappingNode(Tag.MAP, tuples, style);
    }

    private static ScalarNode scalar(String text) {
        // A bare number stays bare; any other text that YAML would take for a number or a truth value gets quotes.
        boolean number = text.matches("-?\\d+(\\.\\d+)?(E-?\\d+)?");
        Tag tag = !number ? Tag.STR : text.matches("-?\\d+") ? Tag.INT : Tag.FLOAT;
        return new ScalarNode(tag, text, ScalarStyle.PLAIN);
    }

    /** Readers of YAML 1.1 take a bare 20:30 for a number to the base sixty: 1230. */
    private static ScalarNode quoted(String text) {
        return new ScalarNode(Tag.STR, text, ScalarStyle.DOUBLE_QUOTED);
    }

    private static Node withComments(Node node, @Nullable Node earlier) {
        if (earlier != null) {
            node.setBlockComments(earlier.getBlockComments());
            node.setInLineComments(earlier.getInLineComments());
            node.setEndComments(earlier.getEndComments());
        }
        return node;
    }

    private static @Nullable NodeTuple tuple(@Nullable Node node, String key) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode scalar
                        && scalar.getValue().equals(key)) {
                    return tuple;
                }
            }
        }
        return null;
    }

    private static @Nullable Node item(@Nullable Node node, int index) {
        return node instanceof SequenceNode sequence
                        && index < sequence.getValue().size()
                ? sequence.getValue().get(index)
                : null;
    }

    private static boolean isEmpty(Object value) {
        return (value instanceof List<?> list && list.isEmpty()) || (value instanceof Map<?, ?> map && map.isEmpty());
    }

    private static @Nullable Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(component + " cannot be read", impossible);
        }
    }
}
