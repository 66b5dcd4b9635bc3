package org.tidewright.web.page;

import java.util.List;

/**
 * What stands around every page.
 *
 * @param page key of the page, by which page.js knows what to do on it
 * @param bars bars of the neatline under the masthead
 * @param assets address under which this build's files are served
 * @param systemName words on the system picker
 */
public record Chrome(
        String title,
        String page,
        int bars,
        String assets,
        List<Pick> systems,
        String systemName,
        List<Link> pages,
        boolean us,
        String metricHref,
        String usHref) {

    /** A system in the picker. */
    public record Pick(String name, String about, String href, boolean current) {}

    /**
     * A page in the index.
     *
     * @param shortName where there is little room
     * @param atThumb whether it is among the few at the edge of a phone
     */
    public record Link(String name, String shortName, String href, boolean current, boolean atThumb) {}

    public String asset(String name) {
        return assets + name;
    }
}
