package org.tidewright.web.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import org.tidewright.husbandry.wishlist.WishFile;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * The kept wish list of a system, read.
 *
 * @param text of the file; empty where there is none
 * @param faults each with its place; the list is then empty and the file is not to be written over
 */
public record WishFiles(String text, WishList list, List<String> faults) {
    public WishFiles {
        faults = List.copyOf(faults);
    }

    /** As it stands. */
    public static WishFiles of(Desk desk, SystemView view) {
        String text = desk.wishes(view.entry().id());
        if (text.isBlank()) {
            return new WishFiles(text, WishList.EMPTY, List.of());
        }
        WishFile.Reading reading = WishFile.read(text, desk.species().catalogue());
        String name = view.entry().id() + ".wishes.csv";
        return new WishFiles(
                text,
                reading.list(),
                reading.faults().stream()
                        .map(fault -> name + ":" + fault.line() + ":" + fault.column() + ": " + fault.sentence())
                        .toList());
    }

    /** Tells one state of the file from another, so that nobody overwrites unseen what somebody else kept. */
    public String mark() {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", sum.getValue());
    }
}
