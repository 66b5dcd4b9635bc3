package org.tidewright.web.page;

/** Something went wrong, in words and with a way on. */
public record ProblemPage(String note, String title, String lead, String href, String hrefWords) {}
