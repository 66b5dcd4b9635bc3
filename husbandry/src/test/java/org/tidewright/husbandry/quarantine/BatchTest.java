package org.tidewright.husbandry.quarantine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.journal.Event.Move;

class BatchTest {
    @Test
    void aBatchBeginsWithTheFirstArrivalAndEndsWithTheLastThatGoes() {
        Log log = new Log()
                .came(3, 2, "clownfish")
                .came(5, 1, "wrasse")
                .move(9, 1, "wrasse", Move.DIED)
                .move(40, 2, "clownfish", Move.LEFT);
        Batch batch = Batch.newest(log.lines()).orElseThrow();
        assertThat(batch.began()).isEqualTo(Log.day(3));
        assertThat(batch.ended()).isEqualTo(Log.day(40));
        assertThat(batch.came()).isEqualTo(3);
        assertThat(batch.died()).isEqualTo(1);
        assertThat(batch.left()).isEqualTo(2);
        assertThat(batch.heads()).isZero();
    }

    @Test
    void whoComesIntoAnEmptyTankBeginsANewOne() {
        Log log = new Log()
                .came(3, 2, "clownfish")
                .move(40, 2, "clownfish", Move.LEFT)
                .came(50, 1, "goby");
        Batch batch = Batch.newest(log.lines()).orElseThrow();
        assertThat(batch.began()).isEqualTo(Log.day(50));
        assertThat(batch.ended()).isNull();
        assertThat(batch.present()).containsExactly(new Batch.Animals("goby", 1));
        assertThat(batch.lines()).hasSize(1);
    }

    @Test
    void oneOfSeveralGoesByTheSameName() {
        Log log = new Log().came(3, 3, "Wrasses").move(9, 1, "wrasse", Move.DIED);
        Batch batch = Batch.newest(log.lines()).orElseThrow();
        assertThat(batch.present()).containsExactly(new Batch.Animals("Wrasses", 2));
        assertThat(batch.unmatched()).isEmpty();
    }

    @Test
    void aLineAboutWhoNeverCameIsTold() {
        Log log =
                new Log().came(3, 1, "clownfish").move(9, 1, "goby", Move.DIED).move(10, 2, "clownfish", Move.LEFT);
        Batch batch = Batch.newest(log.lines()).orElseThrow();
        assertThat(batch.unmatched())
                .containsExactly(
                        "1 goby died, but none had come by that name",
                        "2 clownfish left, but only 1 had come by that name");
        assertThat(batch.died()).isZero();
        assertThat(batch.left()).isEqualTo(1);
    }

    @Test
    void withoutAnArrivalThereIsNone() {
        assertThat(Batch.newest(new Log().well(1, 3).lines())).isEmpty();
        assertThat(Batch.newest(new Log().move(1, 1, "goby", Move.LEFT).lines()))
                .isEmpty();
    }
}
