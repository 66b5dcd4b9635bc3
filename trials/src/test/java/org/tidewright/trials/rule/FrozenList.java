package org.tidewright.trials.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Old offences a new rule bears with. The list may only shrink: what is mended must leave it. */
final class FrozenList {
    private final String resource;
    private final Set<String> keys;

    FrozenList(String resource) {
        this.resource = resource;
        try (InputStream in = FrozenList.class.getResourceAsStream("/frozen/" + resource)) {
            this.keys = new String(Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> lines() {
        return List.copyOf(keys);
    }

    void check(List<Offence> offences) {
        assertThat(offences.stream()
                        .filter(offence -> !keys.contains(offence.key()))
                        .toList())
                .as("new offences (add what is missing; do not add to trials/src/test/resources/frozen/%s)", resource)
                .isEmpty();
        Set<String> mended = new TreeSet<>(keys);
        offences.forEach(offence -> mended.remove(offence.key()));
        assertThat(mended)
                .as("mended: take these lines out of trials/src/test/resources/frozen/%s", resource)
                .isEmpty();
    }
}
